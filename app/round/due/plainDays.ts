const DAY_MS = 86_400_000;

/**
 * A plain date as a number of days, so that dates can be added to.
 * @param date  YYYY-MM-DD (RFC 3339 full-date)
 * @returns  days since 1970-01-01
 * @throws RangeError  no date of the calendar
 */
export function daysOf(date: string): number {
  const ms = /^\d{4}-\d\d-\d\d$/.test(date) ? Date.parse(`${date}T00:00:00Z`) : Number.NaN;
  // Date.parse rolls some impossible days over; only a date that comes back the same is one.
  if (!Number.isFinite(ms) || new Date(ms).toISOString().slice(0, 10) !== date)
    throw new RangeError(`${date} is no date of the calendar`);
  return ms / DAY_MS;
}

/** The plain date so many days after 1970-01-01; a fraction of a day is cut off. */
export function dateOf(days: number): string {
  return new Date(Math.floor(days) * DAY_MS).toISOString().slice(0, 10);
}
