import type { Check } from "../../../app/ledger/check.ts";
import type { Verdict } from "../../../app/verdict/Judgement.ts";
import type { FiledFigures } from "../../../app/verdict/rejudge.ts";
import { type Db, prepared } from "../db.ts";
import { placeOf } from "../ledger/place.ts";
import { readEntry } from "../ledger/readEntry.ts";
import { slicesOf } from "../ledger/slices.ts";
import { readTerms } from "../projections/checkTerms.ts";

/** A check that counts, with what judging it anew needs. */
export type Judgeable = {
  readonly checkId: string;
  readonly spindleId: string;
  readonly measuredAtMs: number;
  readonly verdict: Verdict;
  readonly figures: FiledFigures;
};

type Row = {
  n: number;
  check_id: string;
  spindle_id: string;
  measured_at_ms: number;
  verdict: Verdict;
  terms: string | null;
};

/** Places at which to cut all entries into stretches, in order of arrival: the first place of each. */
export function stretches(db: Db): number[] {
  return slicesOf(db).map(({ run, from }) => placeOf(run, from));
}

/** The checks that count from one place up to another (not included), in the order they were filed. */
export function judgeable(db: Db, from: number, to: number): Judgeable[] {
  return prepared<Row>(db, hasTerms(db) ? WITH_TERMS : WITHOUT)
    .all(from, to)
    .flatMap((row) => {
      const figures = row.terms === null ? bodyOf(db, row.n) : readTerms(row.terms);
      if (figures === undefined) return [];
      const { check_id: checkId, spindle_id: spindleId, measured_at_ms: measuredAtMs, verdict } = row;
      return [{ checkId, spindleId, measuredAtMs, verdict, figures }];
    });
}

const COLUMNS = "c.n, c.check_id, c.spindle_id, c.measured_at_ms, c.verdict";
const STRETCH = "c.n >= ? AND c.n < ? AND c.state = 'valid' ORDER BY c.n";
const WITH_TERMS = `SELECT ${COLUMNS}, t.terms FROM check_row c LEFT JOIN check_terms t ON t.n = c.n WHERE ${STRETCH}`;
const WITHOUT = `SELECT ${COLUMNS}, NULL AS terms FROM check_row c WHERE ${STRETCH}`;

/** A file of an older form that was opened for reading only has no such table; its bodies tell as much, slowly. */
function hasTerms(db: Db): boolean {
  return prepared(db, "SELECT 1 FROM sqlite_schema WHERE name = 'check_terms'").get() !== undefined;
}

function bodyOf(db: Db, n: number): Check | undefined {
  const entry = readEntry(db, n);
  return entry?.kind === "replacement" ? (entry.body as { by: Check }).by : (entry?.body as Check | undefined); // `check_row` lists no other kinds
}
