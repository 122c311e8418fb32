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
  /** Share found of the flag that is missed most; only flags due fifty times and more are judged. */
  readonly flagsFound: number;
  /** Share of the cycles that wrongly have the flag that is wrong most. */
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
  const due = counts(scores.flatMap((s) => s.dueFlags));
  const missed = counts(scores.flatMap((s) => s.missedFlags));
  const wrong = counts(scores.flatMap((s) => s.wrongFlags));
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
    flagsFound: leastShare(due, missed),
    flagsWrong: cycles === 0 ? Number.NaN : Math.max(0, ...Object.values(wrong)) / cycles,
    missedFlags: missed,
    wrongFlags: wrong,
  };
}

/** Share of those at or under 1; NaN where there are none. */
function within(shares: readonly number[]): number {
  return shares.length === 0 ? Number.NaN : shares.filter((x) => x <= 1).length / shares.length;
}

type Counts = Partial<Record<CycleFlag, number>>;

function leastShare(due: Counts, missed: Counts): number {
  // Object.entries forgets the key type; counts have flags only.
  const judged = (Object.entries(due) as [CycleFlag, number][]).filter(([, n]) => n >= 50);
  return judged.length === 0 ? Number.NaN : Math.min(...judged.map(([flag, n]) => 1 - (missed[flag] ?? 0) / n));
}

function counts(flags: readonly CycleFlag[]): Counts {
  const found: Counts = {};
  for (const flag of flags) found[flag] = (found[flag] ?? 0) + 1;
  return found;
}
