import { countSteps, dot, loadSteps, sumOfSquares } from "./loadSteps.ts";
import { refineOffset } from "./refineOffset.ts";
import type { TimedStream } from "./TimedStream.ts";

export type Alignment =
  | {
      readonly kind: "aligned";
      /** To be added to the times of `other` to bring them onto those of `base`. */
      readonly offsetS: number;
      /** Half of the range the offset may lie in: the slower sampling interval over √(load steps), at least a tenth of it. */
      readonly halfWidthS: number;
      /** Correlation of the load steps at this offset, at most 1. */
      readonly correlation: number;
    }
  | { readonly kind: "unclear"; readonly reason: "tooShort" | "noSteps" | "noMatch" | "ambiguous" };

/**
 * Finds the time offset between two instruments that felt the same loads: the cross-correlation of their load
 * steps over the whole range of offsets, then a closer comparison of the rises. Units and rates may differ.
 * @param base  the stream whose clock is kept
 * @param other  the stream to be moved
 * @param maxOffsetS  largest offset looked for, above 0
 * @returns  `unclear` when there is no load step, when no offset makes the steps agree (correlation under 0.5), or
 *   when a second offset makes them agree nearly as well (evenly repeated equal steps)
 * @throws RangeError  `maxOffsetS` not above 0, or times and values of different lengths
 * @see Oppenheim and Schafer, Discrete-Time Signal Processing, on cross-correlation and delay
 */
export function alignStreams(base: TimedStream, other: TimedStream, maxOffsetS: number): Alignment {
  if (!(maxOffsetS > 0)) throw new RangeError(`alignStreams requires a range of offsets above zero, got ${maxOffsetS}`);
  for (const s of [base, other])
    if (s.tS.length !== s.value.length) throw new RangeError("alignStreams requires a time for each value");
  if (base.tS.length < 8 || other.tS.length < 8) return { kind: "unclear", reason: "tooShort" };
  const interval = Math.max(meanInterval(base), meanInterval(other));
  const from = Math.min(base.tS[0]!, other.tS[0]! - maxOffsetS);
  const to = Math.max(last(base.tS), last(other.tS) + maxOffsetS);
  const count = Math.ceil((to - from) / interval) + 2;
  if (!(count > 8 && count < 4e6)) return { kind: "unclear", reason: "tooShort" };
  const grid = { from, interval, count };
  const fixed = loadSteps(base, grid, 0);
  const energy = sumOfSquares(fixed) * sumOfSquares(loadSteps(other, grid, 0));
  if (!(energy > 0)) return { kind: "unclear", reason: "noSteps" };
  const rough = roughPeaks(fixed, loadSteps(other, grid, 0), Math.ceil(maxOffsetS / interval));
  if (rough.best < 0.5 * Math.sqrt(energy)) return { kind: "unclear", reason: "noMatch" };
  if (rough.rival > 0.95 * rough.best) return { kind: "unclear", reason: "ambiguous" };
  const offsetS = refineOffset(base, other, rough.lag * interval, interval);
  const moved = loadSteps(other, grid, offsetS);
  const correlation = dot(fixed, moved) / Math.sqrt(sumOfSquares(fixed) * sumOfSquares(moved));
  const halfWidthS = interval * Math.max(0.1, 1 / Math.sqrt(Math.max(1, countSteps(fixed))));
  return { kind: "aligned", offsetS, halfWidthS, correlation };
}

const last = (a: ArrayLike<number>) => a[a.length - 1]!;
const meanInterval = (s: TimedStream) => (last(s.tS) - s.tS[0]!) / (s.tS.length - 1);

/** The best whole lag, and the best correlation that lies at least three lags from it and is a peak of its own. */
function roughPeaks(
  fixed: Float64Array,
  moved: Float64Array,
  most: number,
): { lag: number; best: number; rival: number } {
  const scores = new Float64Array(2 * most + 1);
  const places = [...fixed.keys()].filter((k) => fixed[k] !== 0); // steps are rare: most products are zero
  for (let lag = -most; lag <= most; lag += 1) {
    let sum = 0;
    for (const k of places) sum += fixed[k]! * (moved[k - lag] ?? 0);
    scores[lag + most] = sum;
  }
  let at = 0;
  for (let i = 1; i < scores.length; i += 1) if (scores[i]! > scores[at]!) at = i;
  let rival = 0;
  for (let i = 1; i < scores.length - 1; i += 1) {
    const isPeak = scores[i]! >= scores[i - 1]! && scores[i]! >= scores[i + 1]!;
    if (isPeak && Math.abs(i - at) >= 3 && !joined(scores, i, at)) rival = Math.max(rival, scores[i]!);
  }
  return { lag: at - most, best: scores[at]!, rival };
}

/** Two tops of one broad hill (slow load changes) are no rivals: between rivals the score falls below nine tenths. */
function joined(scores: Float64Array, a: number, b: number): boolean {
  const low = Math.min(scores[a]!, scores[b]!);
  for (let i = Math.min(a, b); i <= Math.max(a, b); i += 1) if (scores[i]! < 0.9 * low) return false;
  return true;
}
