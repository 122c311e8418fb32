import type { Check } from "../../../app/ledger/check.ts";
import type { Body } from "../../../app/ledger/kinds.ts";
import type { Db } from "../../store/db.ts";
import { readEntry } from "../../store/ledger/readEntry.ts";
import { checkRecord } from "../../store/projections/checkRow.ts";
import { readOperator } from "../../store/records/operators.ts";
import type { About } from "./About.ts";
import { reportTexts } from "./reportTexts.ts";
import type { Writing } from "./Writing.ts";

/** Everything that was done to a check after it was filed, and what it took the place of, as sentences. */
export function correctionsOf({ db, write }: Pick<About, "db" | "write">, checkId: string): string[] {
  const row = checkRecord(db, checkId);
  if (row === undefined) return [];
  const words = reportTexts[write.language];
  const by = (operatorId: string | null) => {
    const who = initials(db, operatorId, write);
    return who === undefined ? "" : words.byWhom(who);
  };
  const said: string[] = [];
  const own = readEntry(db, row.n);
  if (own?.kind === "replacement") {
    const body = own.body as Body<"replacement">; // just asked
    said.push(words.isReplacement(body.checkId, body.reason, by(body.operatorId)));
  }
  const end = row.ended_by_n === null ? undefined : readEntry(db, row.ended_by_n);
  if (end !== undefined) {
    const body = end.body as Body<"void"> & { by?: Check }; // a void or a replacement ends a check
    const when = write.wallTime(Date.parse(end.at), end.offsetMinutes);
    const what = body.by === undefined ? words.madeVoid : words.replacedBy(body.by.checkId);
    const why = `${body.reason}${by(body.operatorId)}`;
    said.push(words.doesNotCount(when, what, why, words.entryOf(end.seq, end.origin)));
  }
  if (row.remeasure_n !== null) {
    const mark = readEntry(db, row.remeasure_n);
    said.push(words.remeasure((mark?.body as Body<"remeasureMark"> | undefined)?.reason ?? "")); // the row points at a mark
  }
  return said;
}

/** A person by initials; by the end of the id where no name is kept. */
export function initials(
  db: Db,
  operatorId: string | null | undefined,
  { language }: Pick<Writing, "language">,
): string | undefined {
  if (operatorId === null || operatorId === undefined) return undefined;
  return readOperator(db, operatorId)?.person?.initials ?? reportTexts[language].operator(operatorId.slice(-4));
}
