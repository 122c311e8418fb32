import { medianInPlace } from "../numerics/median.ts";
import { normalPerMad } from "../numerics/medianAbsoluteDeviation.ts";

/** Looks at stretches of readings in which places without a reading (NaN, Infinity) count as nothing. */

const scratch = new Float64Array(256);

/** Copies at most 256 evenly spaced readings of [from, to) into `into` and returns how many there were. */
function sample(values: Float64Array, from: number, to: number, into: Float64Array): number {
  const stride = Math.max(1, Math.ceil((to - from) / into.length));
  let n = 0;
  for (let i = from; i < to; i += stride) {
    const v = values[i]!;
    if (v - v === 0) into[n++] = v; // finite; cheaper than Number.isFinite here
  }
  return n;
}

/** Median of the readings in [from, to), taken from at most 256 of them; NaN when there is none. */
export function stretchMedian(values: Float64Array, from: number, to: number): number {
  const n = sample(values, from, to, scratch);
  return n === 0 ? Number.NaN : medianInPlace(scratch, n);
}

export type Scale = {
  readonly middle: number;
  /** Standard deviation of the bulk, spikes and knocks left out. */
  readonly sigma: number;
  /** The same from the differences of neighbours: free of drift, smaller than `sigma` where noise is correlated. */
  readonly sigmaOfSteps: number;
  /** Least difference between neighbours that is no rounding; Infinity when all are equal. */
  readonly step: number;
  readonly n: number;
};

const second = new Float64Array(256);

/** Middle and scatter of the readings in [from, to); undefined when there are under three. */
export function stretchScale(values: Float64Array, from: number, to: number): Scale | undefined {
  const n = sample(values, from, to, scratch);
  if (n < 3) return undefined;
  const middle = medianInPlace(scratch, n);
  for (let i = 0; i < n; i += 1) second[i] = Math.abs(scratch[i]! - middle);
  const mad = medianInPlace(second, n);
  const steps = neighbourSteps(values, from, to);
  const reach = Math.max(4 * normalPerMad * mad, Number.isFinite(steps.least) ? 2.5 * steps.least : 0);
  let squares = 0;
  let inside = 0;
  for (let i = 0; i < n; i += 1) {
    const d = scratch[i]! - middle;
    if (Math.abs(d) > reach) continue;
    squares += d * d;
    inside += 1;
  }
  return { middle, sigma: Math.sqrt(squares / Math.max(1, inside)), sigmaOfSteps: steps.sigma, step: steps.least, n };
}

/** Scatter of differences between neighbours in the last 256 readings of [from, to), and the least one. */
function neighbourSteps(values: Float64Array, from: number, to: number): { sigma: number; least: number } {
  let n = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let i = Math.max(from + 1, to - second.length); i < to; i += 1) {
    const d = values[i]! - values[i - 1]!;
    if (d - d !== 0) continue;
    second[n++] = d;
    const size = Math.abs(d);
    // Figures that came through a unit's factor differ in their last bits.
    if (size < least && size > 1e-9 * Math.abs(values[i]!)) least = size;
  }
  if (n === 0) return { sigma: 0, least };
  const middle = medianInPlace(second, n);
  for (let i = 0; i < n; i += 1) second[i] = Math.abs(second[i]! - middle);
  return { sigma: (normalPerMad * medianInPlace(second, n)) / Math.SQRT2, least };
}
