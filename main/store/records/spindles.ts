import type { Spindle, Works } from "../../../app/ledger/register.ts";
import { type Db, prepared } from "../db.ts";
import { allStatus, type CheckAt, readStatus, type SpindleStatus } from "../projections/SpindleStatus.ts";
import type { CheckSummary } from "./checkSummary.ts";
import { checkSummaryAt } from "./checks.ts";
import { dueOn } from "./dueOn.ts";
import { registered, registeredOne } from "./register.ts";
import { readWorks } from "./works.ts";

/** How one spindle is: the row of the list, and the head of its page. */
export type SpindleStanding = {
  readonly spindle: Spindle;
  /** Checks that count. */
  readonly checkCount: number;
  readonly last: CheckSummary | undefined;
  readonly baseline: CheckSummary | undefined;
  /** Of the last value, as a fraction, down is positive; against the baseline that holds now. */
  readonly dropFromBaseline: number | undefined;
  /** A verdict `stop` that nobody has released, since the check that first gave it. */
  readonly stop: { readonly checkId: string; readonly sinceMs: number } | undefined;
  /** Up to 24 last values, oldest first, to a tenth of a newton: for a small picture of the course. */
  readonly recent: readonly { readonly valueN: number }[];
  /** Plain date in the works' time zone; undefined: never measured, or no interval is set. */
  readonly dueOn: string | undefined;
};

/** All spindles, retired ones too, by id. The work grows with the spindles, not with their checks. */
export function spindleList(db: Db): SpindleStanding[] {
  const works = readWorks(db);
  const status = allStatus(db);
  return registered(db, "spindle").map((spindle) => standing(db, spindle, works, status.get(spindle.spindleId)));
}

/** So many spindles are read at once where others wait for their turn: some milliseconds of work. */
const SLICE = 250;

/**
 * The same list in slices, for a caller who lets others have their turn in between. No statement stays open meanwhile;
 * what is filed between two slices is seen in the later ones alone.
 */
export function* spindleSlices(db: Db): Generator<SpindleStanding[]> {
  const works = readWorks(db);
  const bodies = prepared<string>(
    db,
    "SELECT body FROM register WHERE kind = 'spindle' AND id > ? ORDER BY id LIMIT ?",
  ).pluck();
  for (let after = ""; ; ) {
    const slice = bodies.all(after, SLICE).map((body) => JSON.parse(body) as Spindle); // its schema has seen it
    yield slice.map((spindle) => standing(db, spindle, works, readStatus(db, spindle.spindleId)));
    if (slice.length < SLICE) return;
    after = slice.at(-1)!.spindleId;
  }
}

export function readSpindle(db: Db, spindleId: string): SpindleStanding | undefined {
  const spindle = registeredOne(db, "spindle", spindleId);
  return spindle && standing(db, spindle, readWorks(db), readStatus(db, spindleId));
}

function standing(
  db: Db,
  spindle: Spindle,
  works: Works | undefined,
  status: SpindleStatus | undefined,
): SpindleStanding {
  const at = (check: CheckAt | null | undefined) =>
    check == null ? undefined : checkSummaryAt(db, check, status?.baseline ?? null);
  const last = at(status?.last);
  const baseline = at(status?.baseline);
  const stop = at(status?.stop);
  return {
    spindle,
    checkCount: status?.checkCount ?? 0,
    last,
    baseline,
    dropFromBaseline: dropBetween(baseline?.valueN, last?.valueN),
    stop: stop && { checkId: stop.checkId, sinceMs: stop.measuredAtMs },
    recent: (status?.recent ?? []).map((valueN) => ({ valueN })),
    dueOn: dueOn(last, spindle.intervalDays ?? works?.intervalDays, works?.timeZone),
  };
}

function dropBetween(fromN: number | undefined, toN: number | undefined): number | undefined {
  return fromN === undefined || toN === undefined || fromN === 0 ? undefined : (fromN - toN) / fromN;
}
