/** A plain date, `YYYY-MM-DD`, in the works' time zone; no time of day, so no zone arithmetic. */
export type PlainDate = string;

const DAY_MS = 86_400_000;

/**
 * Days from one plain date to another; negative when `to` lies before.
 * @throws RangeError  a text that is no date, such as 2025-02-30
 */
export function daysBetween(from: PlainDate, to: PlainDate): number {
  return Math.round((msOf(to) - msOf(from)) / DAY_MS);
}

/** @throws RangeError  a text that is no date */
export function addDays(date: PlainDate, days: number): PlainDate {
  return new Date(msOf(date) + days * DAY_MS).toISOString().slice(0, 10);
}

function msOf(date: PlainDate): number {
  const ms = /^\d{4}-\d{2}-\d{2}$/.test(date) ? Date.parse(`${date}T00:00:00Z`) : Number.NaN;
  // Date.parse carries 30 February over into March; a date that does not come back as written is none.
  if (!Number.isFinite(ms) || new Date(ms).toISOString().slice(0, 10) !== date)
    throw new RangeError(`"${date}" is no date; write it as 2026-03-31`);
  return ms;
}
