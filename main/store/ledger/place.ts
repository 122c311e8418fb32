import { type Db, prepared } from "../db.ts";

/** A place in this file: run x 2^32 + seq. Rises in order of arrival; exact in a double for two million runs. */
export const placeOf = (run: number, seq: number): number => run * RUN + seq;
export const runOf = (place: number): number => Math.floor(place / RUN);
export const seqOf = (place: number): number => place % RUN;

const RUN = 2 ** 32;

/** A stretch of one origin's entries as they came to this file. */
export type Run = { readonly n: number; readonly origin_n: number; readonly first_seq: number };

/** All runs in order of arrival; a file that was never merged has one or few. */
export function allRuns(db: Db): Run[] {
  return prepared<Run>(db, "SELECT n, origin_n, first_seq FROM run ORDER BY n").all();
}

/** The last place a run has so far; undefined while it has none. */
export function lastPlace(db: Db, run: number): number | undefined {
  const last = prepared<number | null>(db, "SELECT max(n) FROM entry WHERE n >= ? AND n < ?");
  return last.pluck().get(placeOf(run, 0), placeOf(run + 1, 0)) ?? undefined;
}

/** Where entry `seq` of an origin stands in this file; undefined when it does not. */
export function placeOfEntry(db: Db, originN: number, seq: number): number | undefined {
  const run = allRuns(db).findLast((r) => r.origin_n === originN && r.first_seq <= seq);
  const place = run && placeOf(run.n, seq);
  if (place === undefined) return undefined;
  return prepared<number>(db, "SELECT n FROM entry WHERE n = ?").pluck().get(place);
}
