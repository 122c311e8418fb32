import type { TimedStream } from "./TimedStream.ts";

/** Evenly spaced times that two streams are compared on. */
export type Grid = { readonly from: number; readonly interval: number; readonly count: number };

/**
 * Differences of a stream between neighbouring grid points, linear between readings, flat before the first and after
 * the last. Differences under 2 % of the greatest are noise or creep, no load step, and count as zero.
 * @param offsetS  added to the stream's times before it is laid on the grid
 */
export function loadSteps(s: TimedStream, grid: Grid, offsetS: number): Float64Array {
  const steps = new Float64Array(grid.count);
  let i = 0;
  let before = s.value[0]!;
  for (let k = 0; k < grid.count; k += 1) {
    const t = grid.from + k * grid.interval - offsetS;
    while (i < s.tS.length - 2 && s.tS[i + 1]! <= t) i += 1;
    const span = s.tS[i + 1]! - s.tS[i]!;
    const share = span > 0 ? Math.min(1, Math.max(0, (t - s.tS[i]!) / span)) : 0;
    const value = s.value[i]! + share * (s.value[i + 1]! - s.value[i]!);
    steps[k] = value - before;
    before = value;
  }
  const floor = 0.02 * steps.reduce((most, v) => Math.max(most, Math.abs(v)), 0);
  for (let k = 0; k < steps.length; k += 1) if (Math.abs(steps[k]!) < floor) steps[k] = 0;
  return steps;
}

/** Load changes in the steps: neighbouring places that differ from zero are one change. */
export function countSteps(steps: Float64Array): number {
  let count = 0;
  for (let i = 1; i < steps.length; i += 1) if (steps[i] !== 0 && steps[i - 1] === 0) count += 1;
  return count;
}

/** Sum of products, in a plain loop: the correlation calls it for every offset tried. */
export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += a[i]! * b[i]!;
  return sum;
}

export const sumOfSquares = (a: Float64Array) => dot(a, a);
