import { clockJumps } from "../../../app/round/clock/clockJumps.ts";
import { clockOf, correctedMs } from "../../../app/round/clock/clockOf.ts";
import { closePairs } from "../../../app/round/match/closePairs.ts";
import { expectationOf } from "../../../app/round/match/expectationOf.ts";
import type { MatchStop } from "../../../app/round/match/MatchStop.ts";
import { matchRound } from "../../../app/round/match/matchRound.ts";
import type { Take } from "../../../app/round/take/Take.ts";
import { type DrawnRound, drawRound, type RoundHabits } from "../../../simulator/memory/drawRound.ts";

export type Tally = {
  takes: number;
  /** Takes of spindles that no other of the round is nearer to than three of its scatters. */
  apart: number;
  /** Takes of spindles that the program can tell from every other by what it expects of them. */
  told: number;
  right: number;
  rightApart: number;
  rightTold: number;
  wrongSilent: number;
  /** Proposed right, with or without a question. */
  proposed: number;
};

/** Rounds drawn, docked and matched; each take counted as filed right, wrong, or asked about. */
export function tally(rounds: number, located: boolean, habits?: RoundHabits, seed = 1): Tally {
  const sum: Tally = {
    takes: 0,
    apart: 0,
    told: 0,
    right: 0,
    rightApart: 0,
    rightTold: 0,
    wrongSilent: 0,
    proposed: 0,
  };
  for (let r = 0; r < rounds; r += 1) add(sum, drawRound(seed * 100_000 + r, habits), located);
  return sum;
}

function add(sum: Tally, round: DrawnRound, located: boolean): void {
  const stops = round.spindles.map(
    ({ historyN }, i): MatchStop => ({
      spindleId: `${i}`,
      location: located ? `${i + 1}` : undefined,
      expected: expectationOf(historyN),
    }),
  );
  const clock = clockOf({ pcMs: round.endMs, gaugeMs: round.endMs + round.clockOffMs });
  const takes = round.takes.map(
    (t): Take => ({
      valueN: t.valueN,
      atMs: correctedMs(clock, t.atMs + round.clockOffMs),
      location: located ? `${t.location}` : undefined,
      kind: "held",
      refused: undefined,
    }),
  );
  const { order } = clockJumps(takes.map((t) => t.atMs));
  const match = matchRound(takes, stops, {
    order,
    ordered: true,
    fromMs: round.startMs - 3_600_000,
    toMs: round.endMs,
  });
  const asked = new Set(match.questions.flatMap((q) => q.takes));
  const apart = round.spindles.map((s, i) =>
    round.spindles.every(
      (o, k) => k === i || Math.abs(Math.log(o.forceN / s.forceN)) >= 3 * Math.max(o.scatter, s.scatter),
    ),
  );
  const told = closePairs(stops).map((close) => close.length === 0);
  for (const visit of match.visits) {
    for (const at of visit.takes) {
      const truth = round.takes[at]!.spindle;
      const right = visit.stop === truth;
      const silent = !asked.has(at);
      if (right) sum.proposed += 1;
      if (silent && !right) sum.wrongSilent += 1;
      if (silent && right) sum.right += 1;
      if (silent && right && apart[truth]) sum.rightApart += 1;
      if (silent && right && told[truth]) sum.rightTold += 1;
    }
  }
  sum.takes += round.takes.length;
  sum.told += round.takes.filter((t) => told[t.spindle]).length;
  sum.apart += round.takes.filter((t) => apart[t.spindle]).length;
}
