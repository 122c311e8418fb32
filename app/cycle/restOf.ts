import type { Rest } from "./Cycle.ts";
import { residualsOf, roundingVariance, scatterOf } from "./scatter.ts";
import type { Trace } from "./Trace.ts";

export type RestFound = {
  readonly rest: Rest;
  /** Residuals of its readings, for the memory of the noise; at most 4,096 of the last. */
  readonly noise: Float64Array;
  readonly sigmaN: number;
  readonly memory: number;
};

/** Readings kept for the noise; more tell no more. */
const noiseKept = 4096;

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
  let places: number[] = [];
  for (let i = from; i < to; i += 1) if (Math.abs(trace.values[i]! - centre) <= band) places.push(i);
  if (places.length < 3) return undefined;
  let found = figures(trace, places, stepN);
  if (drifts(trace, places, found.scatter.sigmaN * Math.sqrt(found.scatter.memory))) {
    places = places.slice(Math.floor((2 * places.length) / 3));
    found = figures(trace, places, stepN);
  }
  const middle = places[places.length >> 1]!;
  const rest: Rest = {
    indicationN: found.mean,
    standardN: found.standardN,
    atIndex: trace.placeOf(middle),
    atS: trace.timeOf(middle),
    restedS,
  };
  return { rest, noise: found.noise, sigmaN: found.scatter.sigmaN, memory: found.scatter.memory };
}

function figures(trace: Trace, places: number[], stepN: number) {
  const y = Float64Array.from(places, (i) => trace.values[i]!);
  const last = Math.max(0, y.length - noiseKept);
  const residuals = residualsOf(Float64Array.from(places).subarray(last), y.subarray(last), y.length >= 8);
  const scatter = scatterOf(residuals, []);
  let mean = 0;
  for (const v of y) mean += (v - y[0]!) / y.length;
  const own = (scatter.widening * scatter.sigmaN) / Math.sqrt(Math.max(1, y.length / scatter.memory));
  const standardN = Math.sqrt(own * own + roundingVariance(scatter.sigmaN, stepN));
  return { mean: y[0]! + mean, standardN, scatter, noise: residuals.values };
}

function drifts(trace: Trace, places: number[], noise: number): boolean {
  const third = Math.floor(places.length / 3);
  if (third < 8) return false;
  let first = 0;
  let last = 0;
  for (let i = 0; i < third; i += 1) {
    first += trace.values[places[i]!]! / third;
    last += trace.values[places[places.length - 1 - i]!]! / third;
  }
  return Math.abs(last - first) > 5 * noise * Math.sqrt(2 / third);
}
