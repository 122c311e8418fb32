import { leastStep, scatterOfSteps, stretchMedian, stretchScale } from "../read/stretch.ts";
import type { Trace } from "./Trace.ts";

/** Why a zero was not taken. */
export type ZeroRefusal =
  | "noReadings" // under a second of them
  | "moving" // drifting, swinging, knocked
  | "loaded" // a clamping is in work, or one left force behind
  | "overload"
  | "held"; // the gauge shows its maximum, not the present

export type ZeroOutcome =
  | {
      readonly kind: "taken";
      /** Indication at rest. */
      readonly zeroN: number;
      readonly fromIndex: number;
      readonly toIndex: number;
    }
  | { readonly kind: "refused"; readonly reason: ZeroRefusal };

/** Where the rate is unknown. */
const untimedReadings = 16;
const leastReadings = 4;

/**
 * The zero from the last second of readings: their median, when the second is steady. Its quarters must agree within
 * what their scatter explains, no reading may stand far out, and the scatter must not pass twice that of the rest
 * before, where there was one.
 * @param knownSigmaN  scatter of the rest so far; undefined when there was none
 */
export function steadyZero(trace: Trace, knownSigmaN: number | undefined, stepN: number): ZeroOutcome {
  const wanted = trace.rateHz === undefined ? untimedReadings : Math.max(leastReadings, Math.ceil(trace.rateHz));
  const from = trace.length - wanted;
  const to = trace.length;
  if (from < 0) return { kind: "refused", reason: "noReadings" };
  const step = stepN > 0 ? stepN : leastStep(trace.values, from, to);
  const scale = stretchScale(trace.values, from, to, step);
  if (scale === undefined) return { kind: "refused", reason: "noReadings" };
  const sigma = Math.max(scatterOfSteps(trace.values, from, to), 0.3 * step);
  const steady =
    quartersAgree(trace.values, from, to, 7.5 * sigma * Math.sqrt(8 / Math.min(scale.n, wanted)) + 1.01 * step) &&
    noneStandsOut(trace.values, from, to, scale.middle, 7 * Math.max(sigma, scale.sigma) + 1.6 * step) &&
    (knownSigmaN === undefined || scale.sigma <= 2 * knownSigmaN + step);
  if (!steady) return { kind: "refused", reason: "moving" };
  return { kind: "taken", zeroN: scale.middle, fromIndex: trace.placeOf(from), toIndex: trace.placeOf(to - 1) };
}

function quartersAgree(values: Float64Array, from: number, to: number, allowed: number): boolean {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < 4; k += 1) {
    const level = stretchMedian(
      values,
      from + Math.floor(((to - from) * k) / 4),
      from + Math.floor(((to - from) * (k + 1)) / 4),
    );
    if (level < least) least = level;
    if (level > most) most = level;
  }
  return most - least <= allowed;
}

function noneStandsOut(values: Float64Array, from: number, to: number, middle: number, reach: number): boolean {
  for (let i = from; i < to; i += 1) if (Math.abs(values[i]! - middle) > reach) return false;
  return true;
}
