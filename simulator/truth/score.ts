import { applyZeros } from "../../app/cycle/applyZeros.ts";
import type { Cycle, CycleFlag } from "../../app/cycle/Cycle.ts";
import { CycleDetector } from "../../app/cycle/CycleDetector.ts";
import type { TruthCycle, TruthStream } from "./TruthStream.ts";

/** What went wrong, and by how much, in one stream. Errors as shares of what is allowed: 1 is the limit. */
export type Score = {
  readonly condition: string;
  readonly seed: number;
  cycles: number;
  missed: number;
  invented: number;
  split: number;
  joined: number;
  readonly settled: number[];
  /** (settled - truth) / stated standard uncertainty, with the readings it rests on. */
  readonly pulls: { readonly pull: number; readonly effectiveN: number }[];
  readonly peak: number[];
  readonly start: number[];
  readonly end: number[];
  readonly zero: number[];
  readonly dueFlags: CycleFlag[];
  readonly missedFlags: CycleFlag[];
  readonly wrongFlags: CycleFlag[];
};

export function detect(stream: TruthStream): Cycle[] {
  const found: Cycle[] = [];
  const detector = new CycleDetector(
    {
      rateHz: stream.rateHz,
      capacityN: stream.tellCapacity ? stream.capacityN : undefined,
      resolutionN: stream.stepN > 0 ? stream.stepN : undefined,
    },
    (cycle) => found.push(cycle),
  );
  const { forcesN, states } = stream;
  for (let i = 0; i < forcesN.length; i += 1) {
    const state = states?.[i] ?? "live";
    if (state === "rejected") detector.rejected();
    else detector.push(forcesN[i]!, state, Number.NaN);
  }
  const closing = detector.restNow;
  detector.end();
  return [...applyZeros(found, closing).cycles];
}

/** Compares what was found in a stream with its truth. */
export function score(stream: TruthStream, found: readonly Cycle[]): Score {
  const s: Score = {
    condition: stream.condition,
    seed: stream.seed,
    cycles: 0,
    missed: 0,
    invented: 0,
    split: 0,
    joined: 0,
    settled: [],
    pulls: [],
    peak: [],
    start: [],
    end: [],
    zero: [],
    dueFlags: [],
    missedFlags: [],
    wrongFlags: [],
  };
  const overlaps = (c: Cycle, t: TruthCycle) => (c.startS ?? 0) < t.endS && (c.endS ?? 0) > t.startS;
  for (const c of found) {
    const hits = stream.cycles.filter((t) => overlaps(c, t));
    if (hits.length === 0) s.invented += 1;
    // A hair of overlap with the neighbour is no joining.
    const long = hits.filter(
      (t) => Math.min(c.endS!, t.endS) - Math.max(c.startS!, t.startS) > 0.5 * (t.endS - t.startS),
    );
    if (long.length > 1) s.joined += long.length - 1;
  }
  for (const t of stream.cycles) {
    const own = found.filter(
      (c) =>
        Math.min(c.endS!, t.endS) - Math.max(c.startS!, t.startS) >
        0.3 * Math.min(t.endS - t.startS, c.endS! - c.startS!),
    );
    if (t.sure) s.cycles += 1;
    if (own.length === 0 && t.sure) s.missed += 1;
    if (own.length > 1) s.split += own.length - 1;
    if (own.length === 1 && t.sure) compare(stream, t, own[0]!, s);
  }
  return s;
}

function compare(stream: TruthStream, t: TruthCycle, c: Cycle, s: Score): void {
  const scatter = Math.hypot(stream.noiseN, stream.stepN / Math.sqrt(12));
  const hidden = stream.noiseN < 0.5 * stream.stepN ? stream.stepN : 0; // what coarse steps may hide
  const unsteady = t.flags.has("unstable") || t.free.has("unstable");
  const otherWindow = t.free.has("short") && t.flags.has("short") !== c.flags.includes("short");
  if (t.settledN !== undefined && !unsteady && !otherWindow) {
    const error = c.settledN === undefined ? Number.POSITIVE_INFINITY : c.settledN - t.settledN;
    s.settled.push(Math.abs(error) / Math.max(0.0005 * t.settledN, 3 * t.settledErrorN, hidden));
    if (c.settledUncertaintyN !== undefined && c.settledWindow !== undefined)
      s.pulls.push({ pull: error / c.settledUncertaintyN, effectiveN: c.settledWindow.effectiveN });
  }
  if (t.peakN !== undefined && !c.flags.includes("coarse"))
    s.peak.push(Math.abs(c.peakN - t.peakN) / Math.max(0.005 * t.peakN, 3 * scatter, 1.5 * hidden));
  const allowedS = Math.max(2 / stream.rateHz, 0.02) + 1e-9;
  if (!t.flags.has("cut")) {
    s.start.push(Math.abs(c.startS! - t.startS) / allowedS);
    s.end.push(Math.abs(c.endS! - t.endS) / allowedS);
  }
  s.zero.push(Math.abs(c.zeroN - t.zeroN) / Math.max(0.0005 * (t.settledN ?? t.peakN ?? 1), scatter, hidden));
  for (const flag of t.flags) {
    if (t.free.has(flag)) continue;
    s.dueFlags.push(flag);
    if (!c.flags.includes(flag)) s.missedFlags.push(flag);
  }
  for (const flag of c.flags) {
    if (t.flags.has(flag) || t.free.has(flag)) continue;
    s.wrongFlags.push(flag);
  }
}
