const FIRST_MS = 250;
const MOST_MS = 5_000;

/** How long to wait before the next attempt, from the count of those that failed: doubling, up to five seconds. */
export function backOff(failed: number): number {
  return Math.min(MOST_MS, FIRST_MS * 2 ** Math.min(failed, 10));
}
