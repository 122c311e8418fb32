import { medianInPlace } from "../../numerics/median.ts";
import { normalPerMad } from "../../numerics/medianAbsoluteDeviation.ts";

/** Looks at stretches of readings in which places without a reading (NaN, Infinity) count as nothing. */

const scratch = new Float64Array(129);
const second = new Float64Array(129);

/** Readings that show a level well enough. */
const forLevel = 17;

/** Copies at most `most` evenly spaced readings of [from, to) and returns how many there were. */
function sample(values: Float64Array, from: number, to: number, most: number): number {
  const stride = Math.max(1, Math.ceil((to - from) / most));
  let n = 0;
  for (let i = from; i < to; i += stride) {
    const v = values[i]!;
    if (Number.isFinite(v)) scratch[n++] = v;
  }
  return n;
}

/** Median of the readings in [from, to), taken from at most 17 of them; NaN when there is none. */
export function stretchMedian(values: Float64Array, from: number, to: number): number {
  const n = sample(values, from, to, forLevel);
  return n === 0 ? Number.NaN : medianInPlace(scratch, n);
}

export type Scale = {
  readonly middle: number;
  /** Standard deviation of the bulk, spikes and knocks left out. */
  readonly sigma: number;
  readonly n: number;
};

/**
 * Middle and scatter of the readings in [from, to), from at most 129 of them; undefined when there are under three.
 * @param stepN  resolution, 0 when unknown: where the noise is about a step the median deviation knows only 0 and 1 of it
 */
export function stretchScale(values: Float64Array, from: number, to: number, stepN: number): Scale | undefined {
  const n = sample(values, from, to, scratch.length);
  if (n < 3) return undefined;
  const middle = medianInPlace(scratch, n);
  for (let i = 0; i < n; i += 1) second[i] = Math.abs(scratch[i]! - middle);
  const reach = Math.max(4 * normalPerMad * medianInPlace(second, n), 2.5 * stepN);
  let squares = 0;
  let inside = 0;
  for (let i = 0; i < n; i += 1) {
    const d = scratch[i]! - middle;
    if (Math.abs(d) > reach) continue;
    squares += d * d;
    inside += 1;
  }
  return { middle, sigma: Math.sqrt(squares / Math.max(1, inside)), n };
}

/**
 * Scatter from the differences of neighbours in the last 129 readings of [from, to): free of drift, too small where
 * noise is correlated.
 */
export function scatterOfSteps(values: Float64Array, from: number, to: number): number {
  let n = 0;
  let last = Number.NaN; // places without a reading may lie between neighbours
  for (let i = Math.max(from, to - second.length); i < to; i += 1) {
    const v = values[i]!;
    if (!Number.isFinite(v)) continue;
    if (!Number.isNaN(last)) second[n++] = v - last;
    last = v;
  }
  if (n === 0) return 0;
  const middle = medianInPlace(second, n);
  for (let i = 0; i < n; i += 1) second[i] = Math.abs(second[i]! - middle);
  return (normalPerMad * medianInPlace(second, n)) / Math.SQRT2;
}

/** Least difference between neighbours in the last 65 readings of [from, to) that is no rounding; 0 when all are equal. */
export function leastStep(values: Float64Array, from: number, to: number): number {
  let least = Number.POSITIVE_INFINITY;
  let last = Number.NaN;
  for (let i = Math.max(from, to - 65); i < to; i += 1) {
    const v = values[i]!;
    if (!Number.isFinite(v)) continue;
    const size = Math.abs(v - last);
    // Figures that came through a unit's factor differ in their last bits.
    if (size < least && size > 1e-9 * Math.abs(v)) least = size;
    last = v;
  }
  return Number.isFinite(least) ? least : 0;
}
