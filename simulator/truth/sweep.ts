import type { CycleFlag } from "../../app/cycle/Cycle.ts";
import type { Condition } from "./conditions.ts";
import { drawStream } from "./drawStream.ts";
import { renderStream } from "./renderStream.ts";
import { detect, type Score, score } from "./score.ts";

/** What a number of streams came to. Shares are of 1. */
export type Tally = {
  readonly name: string;
  readonly streams: number;
  readonly cycles: number;
  readonly missed: number;
  readonly invented: number;
  readonly split: number;
  readonly joined: number;
  /** Shares of the cycles whose error is within what is allowed. */
  readonly settledWithin: number;
  readonly peakWithin: number;
  readonly startWithin: number;
  readonly endWithin: number;
  readonly zeroWithin: number;
  /** Share of true forces inside the stated 95 % interval, where thirty and more readings count, and where fewer do. */
  readonly coverageMany: number;
  readonly coverageFew: number;
  readonly flagsFound: number;
  /** Wrong flags a cycle. */
  readonly flagsWrong: number;
  readonly missedFlags: Readonly<Partial<Record<CycleFlag, number>>>;
  readonly wrongFlags: Readonly<Partial<Record<CycleFlag, number>>>;
};

/** Draws `streams` of one condition, lets the detector see them, and scores it. The same seed gives the same tally. */
export function sweep(condition: Condition, streams: number, seed: number): Score[] {
  return Array.from({ length: streams }, (_, i) => {
    const stream = renderStream(drawStream(condition, seed + 131 * i));
    return score(stream, detect(stream));
  });
}

export function tally(name: string, scores: readonly Score[]): Tally {
  const sum = (of: (s: Score) => number) => scores.reduce((total, s) => total + of(s), 0);
  const all = (of: (s: Score) => readonly number[]) => scores.flatMap(of);
  const pulls = scores.flatMap((s) => s.pulls);
  const cycles = sum((s) => s.cycles);
  const due = sum((s) => s.flagsDue);
  return {
    name,
    streams: scores.length,
    cycles,
    missed: sum((s) => s.missed),
    invented: sum((s) => s.invented),
    split: sum((s) => s.split),
    joined: sum((s) => s.joined),
    settledWithin: within(all((s) => s.settled)),
    peakWithin: within(all((s) => s.peak)),
    startWithin: within(all((s) => s.start)),
    endWithin: within(all((s) => s.end)),
    zeroWithin: within(all((s) => s.zero)),
    coverageMany: within(pulls.filter((p) => p.effectiveN >= 30).map((p) => Math.abs(p.pull) / 1.96)),
    coverageFew: within(pulls.filter((p) => p.effectiveN < 30).map((p) => Math.abs(p.pull) / 1.96)),
    flagsFound: due === 0 ? Number.NaN : 1 - sum((s) => s.flagsMissed) / due,
    flagsWrong: cycles === 0 ? Number.NaN : sum((s) => s.flagsWrong) / cycles,
    missedFlags: counts(scores.flatMap((s) => s.missedFlags)),
    wrongFlags: counts(scores.flatMap((s) => s.wrongFlags)),
  };
}

/** Share of those at or under 1; NaN where there are none. */
function within(shares: readonly number[]): number {
  return shares.length === 0 ? Number.NaN : shares.filter((x) => x <= 1).length / shares.length;
}

function counts(flags: readonly CycleFlag[]): Partial<Record<CycleFlag, number>> {
  const found: Partial<Record<CycleFlag, number>> = {};
  for (const flag of flags) found[flag] = (found[flag] ?? 0) + 1;
  return found;
}
