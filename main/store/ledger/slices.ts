import { type Db, prepared } from "../db.ts";
import { allRuns, lastPlace, placeOf, type Run, seqOf } from "./place.ts";

/** A stretch of one run, for walking. */
export type Slice = {
  readonly run: number;
  readonly origin: string;
  /** First and last seq. */
  readonly from: number;
  readonly to: number;
  /** Place of the entry before in the same chain; undefined at a chain's beginning. */
  readonly before: number | undefined;
};

/** How many entries are walked at a time; also how often a walk asks whether to go on. */
const SLICE = 256;

/** The ledger in stretches, up to a place: the same for every thread that asks, whatever is filed meanwhile. */
export function slicesOf(db: Db, upTo = Number.MAX_SAFE_INTEGER): Slice[] {
  const origins = new Map(
    prepared<{ n: number; origin: string }>(db, "SELECT n, origin FROM origin")
      .all()
      .map(({ n, origin }) => [n, origin]),
  );
  const ends = new Map<number, number>(); // by origin: place of the last entry in the runs before
  return allRuns(db).flatMap((run) => {
    const last = Math.min(lastPlace(db, run.n) ?? 0, upTo);
    if (last < placeOf(run.n, run.first_seq)) return [];
    const slices = slicesOfRun(run, seqOf(last), origins.get(run.origin_n) ?? "", ends.get(run.origin_n));
    ends.set(run.origin_n, last);
    return slices;
  });
}

/** How many entries the file holds, by their numbers. */
export function entryCount(db: Db): number {
  return slicesOf(db).reduce((sum, { from, to }) => sum + to - from + 1, 0);
}

function slicesOfRun(run: Run, last: number, origin: string, end: number | undefined): Slice[] {
  const slices: Slice[] = [];
  for (let from = run.first_seq; from <= last; from += SLICE) {
    const before = from === run.first_seq ? end : placeOf(run.n, from - 1);
    slices.push({ run: run.n, origin, from, to: Math.min(from + SLICE - 1, last), before });
  }
  return slices;
}
