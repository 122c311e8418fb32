/** The least step back that is no rounding of minutes, ms. */
const LEAST_MS = 90_000;

export type MemoryTimes = {
  /** Positions of the records, oldest first by the order of the memory. */
  readonly order: readonly number[];
  /** Positions of records before which the clock was put back: their stamp lies before the one of the record before. */
  readonly jumps: readonly { readonly at: number; readonly backMs: number }[];
};

/**
 * Which end of a memory is the older, and where its clock was put back. A memory is written in order, so its stamps rise,
 * or fall when it sends the newest first; a step against that is a clock that was set or lost its time.
 * @param stamps  as the records came; undefined where one has none
 */
export function clockJumps(stamps: readonly (number | undefined)[]): MemoryTimes {
  const dated = [...stamps.keys()].filter((i) => stamps[i] !== undefined);
  let rises = 0;
  let falls = 0;
  for (let k = 1; k < dated.length; k += 1) {
    const step = stamps[dated[k]!]! - stamps[dated[k - 1]!]!;
    if (step > 0) rises += 1;
    if (step < 0) falls += 1;
  }
  const newestFirst = falls > rises;
  const order = newestFirst ? [...stamps.keys()].reverse() : [...stamps.keys()];
  const inOrder = newestFirst ? dated.reverse() : dated;
  const jumps = inOrder.flatMap((at, k) => {
    const backMs = k === 0 ? 0 : stamps[inOrder[k - 1]!]! - stamps[at]!;
    return backMs >= LEAST_MS ? [{ at, backMs }] : [];
  });
  return { order, jumps };
}
