import type { Body, Kind } from "../../../app/ledger/kinds.ts";
import { type Db, prepared } from "../db.ts";

/** Kinds of which the latest entry with an id is what holds. */
export type RegisterKind = Extract<
  Kind,
  | "works"
  | "spindle"
  | "adapter"
  | "gauge"
  | "linePattern"
  | "operator"
  | "setting"
  | "reference"
  | "plan"
  | "adjustment"
>;

/** Everything of a kind as it stands now, by id. */
export function registered<K extends RegisterKind>(db: Db, kind: K): Body<K>[] {
  const bodies = prepared<string>(db, "SELECT body FROM register WHERE kind = ? ORDER BY id").pluck().all(kind);
  return bodies.map((body) => JSON.parse(body) as Body<K>); // written from a body its schema had seen
}

export function registeredOne<K extends RegisterKind>(db: Db, kind: K, id: string): Body<K> | undefined {
  const body = prepared<string>(db, "SELECT body FROM register WHERE kind = ? AND id = ?").pluck().get(kind, id);
  return body === undefined ? undefined : (JSON.parse(body) as Body<K>); // as above
}

/** Whether anything of this kind stands in the register, retired or not. */
export function hasRegistered(db: Db, kind: RegisterKind): boolean {
  return prepared<number>(db, "SELECT 1 FROM register WHERE kind = ? LIMIT 1").pluck().get(kind) !== undefined;
}

/** Name and state of all of a kind, without the rest: what a new name is held against. */
export function registeredNames(
  db: Db,
  kind: "spindle",
): { readonly id: string; readonly state: string; readonly label: string }[] {
  const sql =
    "SELECT id, json_extract(body, '$.state') AS state, json_extract(body, '$.name') AS label FROM register WHERE kind = ?";
  return prepared<{ id: string; state: string; label: string }>(db, sql).all(kind);
}
