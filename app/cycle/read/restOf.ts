import type { Rest } from "../Cycle.ts";
import type { Trace } from "../phase/Trace.ts";
import { lineFit, noiseOverSteps, residualsOf, roundingOfMean, type Scatter, scatterOf } from "./scatter.ts";

export type RestFound = {
  readonly rest: Rest;
  /** Residuals of its latest readings, for the memory of the noise. */
  readonly noise: Float64Array;
  readonly sigmaN: number;
  readonly memory: number;
};

/** Readings the noise is taken from; more tell no more. */
const noiseKept = 512;

/**
 * The indication at rest: mean of the readings in [from, to) that lie within the zero band, so that knocks and spikes
 * do not count. Where they drift, only the last third is taken: the zero is wanted where the clamping begins.
 * @param centre  rough level of the rest
 * @param band  half-width of the zero band
 * @param restedS  how long the gauge had been at rest at `to`
 * @returns  undefined when fewer than three readings lie in the band
 */
export function restOf(
  trace: Trace,
  from: number,
  to: number,
  centre: number,
  band: number,
  stepN: number,
  restedS: number | undefined,
): RestFound | undefined {
  const inside = (a: number, b: number) => meanInside(trace.values, a, b, centre, band);
  const all = inside(from, to);
  if (all.n < 3) return undefined;
  const noise = noiseOf(trace.values, from, to, centre, band);
  const spread = noise.scatter.sigmaN * Math.sqrt(noise.scatter.memory);
  const third = Math.floor((to - from) / 3);
  const first = inside(from, from + third);
  const last = inside(to - third, to);
  const drifts =
    Math.min(first.n, last.n) >= 8 &&
    Math.abs(last.mean - first.mean) > 5 * spread * Math.sqrt(1 / first.n + 1 / last.n);
  const taken = drifts ? last : all;
  const middle = ((drifts ? to - third : from) + to) >> 1;
  const own =
    (noise.scatter.widening * spread) / Math.sqrt(Math.max(1, taken.n / noise.scatter.memory) * noise.scatter.memory);
  const rest: Rest = {
    indicationN: taken.mean,
    standardN: Math.sqrt(own * own + roundingOfMean(noiseOverSteps(noise.values, noise.scatter.sigmaN, stepN), stepN)),
    atIndex: trace.placeOf(middle),
    atS: trace.timeOf(middle),
    restedS,
    reset: false,
  };
  return { rest, noise: noise.values, sigmaN: noise.scatter.sigmaN, memory: noise.scatter.memory };
}

function meanInside(
  values: Float64Array,
  from: number,
  to: number,
  centre: number,
  band: number,
): { n: number; mean: number } {
  let n = 0;
  let sum = 0;
  for (let i = from; i < to; i += 1) {
    const d = values[i]! - centre;
    if (!(Math.abs(d) <= band)) continue;
    sum += d;
    n += 1;
  }
  return { n, mean: centre + sum / Math.max(1, n) };
}

/** Scatter of the latest readings about their line. */
function noiseOf(
  values: Float64Array,
  from: number,
  to: number,
  centre: number,
  band: number,
): { values: Float64Array; scatter: Scatter } {
  const x = new Float64Array(noiseKept);
  const y = new Float64Array(noiseKept);
  let n = 0;
  for (let i = to - 1; i >= from && n < noiseKept; i -= 1) {
    if (!(Math.abs(values[i]! - centre) <= band)) continue;
    x[n] = i;
    y[n] = values[i]!;
    n += 1;
  }
  const xs = x.subarray(0, n);
  const ys = y.subarray(0, n);
  const residuals = residualsOf(xs, ys, lineFit(xs, ys), n >= 8);
  return { values: residuals.values, scatter: scatterOf(residuals, []) };
}
