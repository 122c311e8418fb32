import type { Ground } from "../read/Ground.ts";
import { groundOf } from "../read/groundOf.ts";
import { findHold } from "../read/holdBounds.ts";
import { stepsInHold } from "../read/holdSteps.ts";
import { peakForce } from "../read/peakForce.ts";
import type { Stretch } from "../read/readCycle.ts";
import { findSpikes } from "../read/spikes.ts";
import type { Excursion } from "./Excursion.ts";
import { traceLimit } from "./Trace.ts";

/**
 * Makes room in a full trace: of a long hold the rise, the settled window and the latest readings stay; what the
 * readings between them show (a higher peak, spikes, steps, overload) is noted and they are forgotten.
 */
export function foldHold(s: Stretch, out: Excursion): void {
  const { trace } = s;
  const recent = trace.length - (traceLimit >> 3);
  const g = groundOf(s, out.foldedFlags);
  const hold = findHold(g, false);
  const settledBy =
    hold === undefined ? traceLimit : trace.timed ? trace.indexAfter(hold.arrival, 3.2) + 1 : hold.arrival + 4096;
  // A rise that takes longer than half the trace loses its middle instead.
  const kept = Math.min(settledBy, traceLimit >> 1);
  const from = trace.skipped > 0 ? trace.gapAt : Math.max(kept, s.onset + 1);
  if (hold !== undefined && settledBy <= kept) note(g, hold.levelN, Math.max(from, hold.arrival), recent, s, out);
  trace.fold(from, recent);
  out.blockFrom = trace.length;
}

function note(g: Ground, levelN: number, from: number, to: number, s: Stretch, out: Excursion): void {
  for (const i of findSpikes(g.w, from, to, s.sigmaN, s.stepN)) {
    g.w[i] = Number.NaN;
    out.foldedFlags.add("spike");
  }
  if (stepsInHold(g, from, to, levelN, s.restMemory)) out.foldedFlags.add("unstable");
  const peak = peakForce({ ...g, onset: from, end: to }, g.zeroN + levelN);
  if (peak !== undefined) out.foldedPeakN = Math.max(peak.indication, out.foldedPeakN ?? Number.NEGATIVE_INFINITY);
}
