import type { TimedStream } from "./TimedStream.ts";

/** When a load counts as standing still; limits in the stream's own unit. */
export type SteadyRule = {
  readonly windowS: number;
  /** Most the straight line through the window may change over it. */
  readonly maxDrift: number;
  /** Most the readings may scatter about that line, standard deviation. */
  readonly maxScatter: number;
};

export type Steadiness = {
  readonly steady: boolean;
  /** 1 at complete rest, 0.5 at the limit, 0 at twice the limit and beyond: what the steadiness bar shows. */
  readonly share: number;
};

/** Fewest readings that can show whether a load moves. */
const LEAST = 5;

/**
 * Whether the readings of one window stand still: neither a trend nor scatter beyond the rule.
 * @param from  index of the first reading of the window
 * @param to  index of the last
 * @returns  not steady, share 0, with fewer than five readings or none that differ in time
 */
export function steadiness(stream: TimedStream, from: number, to: number, rule: SteadyRule): Steadiness {
  const n = to - from + 1;
  if (n < LEAST) return { steady: false, share: 0 };
  const t0 = stream.tS[from]!;
  const v0 = stream.value[from]!;
  if (!(stream.tS[to]! > t0)) return { steady: false, share: 0 };
  let meanT = 0;
  let meanV = 0;
  for (let i = from; i <= to; i += 1) {
    meanT += (stream.tS[i]! - t0) / n;
    meanV += (stream.value[i]! - v0) / n;
  }
  let tt = 0;
  let tv = 0;
  let vv = 0;
  for (let i = from; i <= to; i += 1) {
    const t = stream.tS[i]! - t0 - meanT;
    const v = stream.value[i]! - v0 - meanV;
    tt += t * t;
    tv += t * v;
    vv += v * v;
  }
  const slope = tv / tt;
  const drift = Math.abs(slope) * (stream.tS[to]! - t0);
  const scatter = Math.sqrt(Math.max(0, vv - slope * tv) / (n - 2));
  const used = Math.max(drift / rule.maxDrift, scatter / rule.maxScatter);
  return { steady: used <= 1, share: Math.max(0, 1 - used / 2) };
}

export type Stretch = { readonly fromS: number; readonly toS: number };

/**
 * Every stretch of a stream in which each window of the rule stands still, in the stream's own time. A stretch is at
 * least one window long; a window with a gap of more than half its length between readings is none.
 */
export function steadyStretches(stream: TimedStream, rule: SteadyRule): readonly Stretch[] {
  const stretches: { fromS: number; toS: number }[] = [];
  let from = 0;
  for (let to = 0; to < stream.tS.length; to += 1) {
    while (stream.tS[to]! - stream.tS[from + 1]! >= rule.windowS) from += 1;
    const fromS = stream.tS[from]!;
    const toS = stream.tS[to]!;
    if (toS - fromS < rule.windowS || hasGap(stream, from, to, rule.windowS / 2)) continue;
    if (!steadiness(stream, from, to, rule).steady) continue;
    const open = stretches.at(-1);
    if (open !== undefined && fromS <= open.toS) open.toS = toS;
    else stretches.push({ fromS, toS });
  }
  return stretches;
}

function hasGap(stream: TimedStream, from: number, to: number, most: number): boolean {
  for (let i = from + 1; i <= to; i += 1) if (stream.tS[i]! - stream.tS[i - 1]! > most) return true;
  return false;
}
