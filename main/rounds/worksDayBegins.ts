import { worksDay } from "./worksDay.ts";

const MINUTE = 60_000;
/** No zone is further from UTC than this, in minutes. */
const FURTHEST = 16 * 60;

/**
 * The first minute of a plain date where the works stand, which need not be where this computer's clock says it is. Looked
 * for, not calculated: a day that begins with the clocks being put forward has no midnight.
 */
export function worksDayBegins(day: string, timeZone: string): number {
  const midnightUtc = Date.parse(`${day}T00:00:00Z`);
  let [before, from] = [-FURTHEST, FURTHEST];
  while (from - before > 1) {
    const middle = Math.floor((before + from) / 2);
    if (worksDay(midnightUtc + middle * MINUTE, timeZone) >= day) from = middle;
    else before = middle;
  }
  return midnightUtc + from * MINUTE;
}
