import { type Alignment, alignStreams } from "../../app/proof/reference/alignStreams.ts";
import { type Steadiness, type SteadyRule, steadiness, steadyStretches } from "../../app/proof/reference/steadiness.ts";
import type { TimedStream } from "../../app/proof/reference/TimedStream.ts";
import { takeSteps } from "../../app/proof/reference/takeSteps.ts";
import type { StreamLog } from "./StreamLog.ts";

/** One instrument that is read live, and how still it must stand. */
export type Instrument = {
  readonly log: StreamLog;
  readonly capacityN: number;
  readonly resolutionN: number | undefined;
};

/** Means over the very same stretch, both instruments at rest in all of it. */
export type LiveTaking = {
  readonly indicationN: number;
  readonly referenceShownN: number | undefined;
  readonly n: number;
};

/** Longest the ports may differ after the quickest delivery has told the clocks: bursts of a second and a half. */
const MOST_OFFSET_S = 2;
/** What is looked at for the time offset. */
const ALIGN_S = 180;
/** Doubt about the offset while no load step has told it. */
const UNKNOWN_HALF_WIDTH_S = 0.5;

/** Drift and scatter a window may show: three ten-thousandths of the capacity, or what the last digit does by itself (common practice, no source). */
export function steadyRule({ log, capacityN, resolutionN = 0 }: Instrument, readS: number): SteadyRule {
  const limitN = Math.max(3e-4 * capacityN, 1.5 * resolutionN);
  // A window needs five readings, and is no longer than the reading itself where the rate allows.
  const windowS = Math.max(Math.min(1, readS / 2), 5 * (log.intervalS ?? 0));
  return { windowS, maxDrift: limitN, maxScatter: limitN };
}

/** How still it stands now. */
export function steadinessNow(instrument: Instrument, readS: number): Steadiness {
  const rule = steadyRule(instrument, readS);
  const tail = instrument.log.tail(rule.windowS + 1e-9);
  return tail.tS.length < 2 ? { steady: false, share: 0 } : steadiness(tail, 0, tail.tS.length - 1, rule);
}

/** What to add to the gauge's times to bring them onto the reference's, both already on the host's clock. */
export function alignmentNow(reference: StreamLog, gauge: StreamLog): Alignment {
  const found = alignStreams(reference.tail(ALIGN_S), gauge.tail(ALIGN_S), MOST_OFFSET_S);
  // A best match at the end of the range is no peak: the true one lies beyond, or there is none.
  const atEnd = found.kind === "aligned" && Math.abs(found.offsetS) > 0.9 * MOST_OFFSET_S;
  return atEnd ? { kind: "unclear", reason: "noMatch" } : found;
}

export type Standing = {
  /** How long both have now stood still together, at most `readS`. */
  readonly stillS: number;
  readonly taking: LiveTaking | undefined;
};

const nothing: Standing = Object.freeze({ stillS: 0, taking: undefined });

/**
 * What could be taken this moment: the last `readS` in which all instruments stood still together. The doubt about the
 * time between the ports is held off at both ends, so an offset moves no value.
 */
export function standingNow(
  gauge: Instrument,
  reference: Instrument | undefined,
  readS: number,
  alignment: Alignment | undefined,
): Standing {
  return reference === undefined ? alone(gauge, readS) : together(gauge, reference, readS, alignment);
}

function alone(gauge: Instrument, readS: number): Standing {
  const rule = steadyRule(gauge, readS);
  const interval = gauge.log.intervalS ?? 0;
  const stream = gauge.log.tail(Math.max(readS, rule.windowS) + 2 * interval);
  const last = steadyStretches(stream, rule).at(-1);
  if (last === undefined || endOf(stream) - last.toS > 2 * interval) return nothing;
  const stillS = last.toS - last.fromS;
  if (stillS < 0.98 * readS) return { stillS, taking: undefined };
  const { mean, count } = meanFrom(stream, last.fromS);
  return { stillS: readS, taking: { indicationN: mean, referenceShownN: undefined, n: count } };
}

function together(gauge: Instrument, reference: Instrument, readS: number, alignment: Alignment | undefined): Standing {
  const known = alignment?.kind === "aligned";
  const offsetS = known ? alignment.offsetS : 0;
  const offsetHalfWidthS = known ? alignment.halfWidthS : UNKNOWN_HALF_WIDTH_S;
  const rules = { gauge: steadyRule(gauge, readS), reference: steadyRule(reference, readS) };
  const interval = Math.max(gauge.log.intervalS ?? 0, reference.log.intervalS ?? 0);
  const guardS = offsetHalfWidthS + 2 * interval;
  const windowS = Math.max(rules.gauge.windowS, rules.reference.windowS);
  const tailS = Math.max(readS, windowS) + 2 * guardS + 2 * interval + Math.abs(offsetS);
  const [r, g] = [reference.log.tail(tailS), gauge.log.tail(tailS)];
  if (r.tS.length < 5 || g.tS.length < 5) return nothing;
  const last = takeSteps(r, g, { ...rules, offsetS, offsetHalfWidthS }).at(-1);
  const newestS = Math.min(endOf(r), endOf(g) + offsetS);
  if (last === undefined || newestS - last.toS > guardS + 3 * interval) return nothing;
  const stillS = last.toS - last.fromS;
  if (stillS < 0.98 * readS) return { stillS, taking: undefined };
  const n = Math.min(last.referenceCount, last.indicationCount);
  return { stillS: readS, taking: { indicationN: last.indication, referenceShownN: last.reference, n } };
}

const endOf = (stream: TimedStream) => stream.tS[stream.tS.length - 1] ?? Number.NEGATIVE_INFINITY;

function meanFrom(stream: TimedStream, fromS: number): { readonly mean: number; readonly count: number } {
  let mean = 0;
  let count = 0;
  for (let i = 0; i < stream.tS.length; i += 1) {
    if (stream.tS[i]! < fromS) continue;
    count += 1;
    mean += (stream.value[i]! - mean) / count;
  }
  return { mean, count };
}
