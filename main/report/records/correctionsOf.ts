import type { Check } from "../../../app/ledger/check.ts";
import type { Body } from "../../../app/ledger/kinds.ts";
import type { Db } from "../../store/db.ts";
import { readEntry } from "../../store/ledger/readEntry.ts";
import { checkRecord } from "../../store/projections/checkRow.ts";
import { readOperator } from "../../store/records/operators.ts";
import { wallTime } from "./words.ts";

/** Everything that was done to a check after it was filed, and what it took the place of, as sentences. */
export function correctionsOf(db: Db, checkId: string): string[] {
  const row = checkRecord(db, checkId);
  if (row === undefined) return [];
  const said: string[] = [];
  const own = readEntry(db, row.n);
  if (own?.kind === "replacement") {
    const body = own.body as Body<"replacement">; // just asked
    said.push(
      `It was filed as a correction, in the place of check ${body.checkId}: ${body.reason}${by(db, body.operatorId)}.`,
    );
  }
  const end = row.ended_by_n === null ? undefined : readEntry(db, row.ended_by_n);
  if (end !== undefined) {
    const body = end.body as Body<"void"> & { by?: Check }; // a void or a replacement ends a check
    const when = wallTime(Date.parse(end.at), end.offsetMinutes);
    const what = body.by === undefined ? "made void" : `replaced by check ${body.by.checkId}`;
    said.push(
      `This check does not count any more. On ${when} it was ${what}: ${body.reason}${by(db, body.operatorId)} (entry ${end.seq} of chain ${end.origin}).`,
    );
  }
  if (row.remeasure_n !== null) {
    const mark = readEntry(db, row.remeasure_n);
    const reason = (mark?.body as Body<"remeasureMark"> | undefined)?.reason ?? "";
    said.push(`It is marked to be measured again: ${reason}.`);
  }
  return said;
}

const by = (db: Db, operatorId: string | null) => {
  const who = initials(db, operatorId);
  return who === undefined ? "" : `, by ${who}`;
};

/** A person by initials; by the end of the id where no name is kept. */
export function initials(db: Db, operatorId: string | null | undefined): string | undefined {
  if (operatorId === null || operatorId === undefined) return undefined;
  return readOperator(db, operatorId)?.person?.initials ?? `operator …${operatorId.slice(-4)}`;
}
