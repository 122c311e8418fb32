import type { Operator } from "../../../app/ledger/register.ts";
import { type Db, prepared } from "../db.ts";
import { putRow } from "../sealedRow.ts";
import { registered } from "./register.ts";

/** A person's name and PIN hash, outside the chain: they can be changed or erased without touching the ledger. */
export type Person = {
  readonly operatorId: string;
  readonly name: string;
  readonly initials: string;
  /** As the one who checks PINs wrote it; undefined: no PIN asked. */
  readonly pin: string | undefined;
};

/** An operator as the ledger has it, with the name where one is kept. */
export type OperatorRecord = Operator & { readonly person: Person | undefined };

export function operatorList(db: Db): OperatorRecord[] {
  const people = new Map(allPeople(db).map((p) => [p.operatorId, p]));
  return registered(db, "operator").map((o) => ({ ...o, person: people.get(o.operatorId) }));
}

export function readOperator(db: Db, operatorId: string): OperatorRecord | undefined {
  return operatorList(db).find((o) => o.operatorId === operatorId);
}

/** Writes or replaces a name. Call it inside `store.write` or `alsoInTransaction`. */
export function putPerson(db: Db, { operatorId, name, initials, pin }: Person): void {
  putRow(db, "person", { operator_id: operatorId, name, initials, pin: pin ?? null });
}

/** Erases a name; what the operator filed stays, under the id alone. */
export function erasePerson(db: Db, operatorId: string): void {
  prepared(db, "DELETE FROM person WHERE operator_id = ?").run(operatorId);
}

function allPeople(db: Db): Person[] {
  const rows = prepared<{ operator_id: string; name: string; initials: string; pin: string | null }>(
    db,
    "SELECT operator_id, name, initials, pin FROM person",
  ).all();
  return rows.map((r) => ({ operatorId: r.operator_id, name: r.name, initials: r.initials, pin: r.pin ?? undefined }));
}
