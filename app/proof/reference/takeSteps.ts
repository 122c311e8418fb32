import { type SteadyRule, type Stretch, steadyStretches } from "./steadiness.ts";
import type { TimedStream } from "./TimedStream.ts";

/** One load felt by both instruments at the same time, standing still in both. */
export type TakenStep = {
  /** On the reference's clock. */
  readonly fromS: number;
  readonly toS: number;
  readonly reference: number;
  readonly indication: number;
  readonly referenceCount: number;
  readonly indicationCount: number;
};

export type StepRule = {
  readonly reference: SteadyRule;
  readonly gauge: SteadyRule;
  /** From `alignStreams`: what to add to the gauge's times, and how far that may be off. */
  readonly offsetS: number;
  readonly offsetHalfWidthS: number;
};

/**
 * Takes a step wherever both instruments stand still together for a whole window. Both ends are held off by the
 * doubt about the time offset and two readings of the slower instrument, so an error of the offset moves no value.
 * @returns  steps in order of time, means over the very same stretch of time for both
 */
export function takeSteps(reference: TimedStream, gauge: TimedStream, rule: StepRule): readonly TakenStep[] {
  const guard = rule.offsetHalfWidthS + 2 * Math.max(meanInterval(reference), meanInterval(gauge));
  const moved = steadyStretches(gauge, rule.gauge).map((s) => ({
    fromS: s.fromS + rule.offsetS,
    toS: s.toS + rule.offsetS,
  }));
  const least = Math.max(rule.reference.windowS, rule.gauge.windowS);
  return common(steadyStretches(reference, rule.reference), moved)
    .map((s) => ({ fromS: s.fromS + guard, toS: s.toS - guard }))
    .filter((s) => s.toS - s.fromS >= least)
    .map((s) => {
      const r = meanBetween(reference, s.fromS, s.toS);
      const g = meanBetween(gauge, s.fromS - rule.offsetS, s.toS - rule.offsetS);
      return { ...s, reference: r.mean, indication: g.mean, referenceCount: r.count, indicationCount: g.count };
    })
    .filter((s) => s.referenceCount > 0 && s.indicationCount > 0);
}

function common(a: readonly Stretch[], b: readonly Stretch[]): Stretch[] {
  const both: Stretch[] = [];
  for (const x of a) {
    for (const y of b) {
      const fromS = Math.max(x.fromS, y.fromS);
      const toS = Math.min(x.toS, y.toS);
      if (toS > fromS) both.push({ fromS, toS });
    }
  }
  return both;
}

function meanBetween(s: TimedStream, fromS: number, toS: number): { mean: number; count: number } {
  let mean = 0;
  let count = 0;
  for (let i = 0; i < s.tS.length; i += 1) {
    if (s.tS[i]! < fromS || s.tS[i]! > toS) continue;
    count += 1;
    mean += (s.value[i]! - mean) / count;
  }
  return { mean, count };
}

const meanInterval = (s: TimedStream) =>
  s.tS.length < 2 ? 0 : (s.tS[s.tS.length - 1]! - s.tS[0]!) / (s.tS.length - 1);
