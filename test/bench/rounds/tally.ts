import { clockJumps } from "../../../app/round/clock/clockJumps.ts";
import { clockOf, correctedMs } from "../../../app/round/clock/clockOf.ts";
import { closePairs } from "../../../app/round/match/closePairs.ts";
import { expectationOf } from "../../../app/round/match/expectationOf.ts";
import type { MatchStop } from "../../../app/round/match/MatchStop.ts";
import { matchRound } from "../../../app/round/match/matchRound.ts";
import type { Take } from "../../../app/round/take/Take.ts";
import { type DrawnRound, drawWorks, type Habits } from "./drawWorks.ts";

export type Tally = {
  takes: number;
  /** Takes of spindles that no other of the round is nearer to than three true scatters. */
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
export function tally(rounds: number, located: boolean, habits: Habits, seed = 1): Tally {
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
  for (let r = 0; r < rounds; r += 1) add(sum, drawWorks(seed * 100_000 + r, habits), located);
  return sum;
}

function add(sum: Tally, round: DrawnRound, located: boolean): void {
  const { spindles, scatter, truth, owners, locations } = round;
  const stops = spindles.map(
    ({ historyN }, i): MatchStop => ({
      spindleId: String(i),
      location: located ? String(i + 1) : undefined,
      expected: expectationOf(historyN),
    }),
  );
  // Docked half an hour after the last reading: one look at both clocks, no docking before.
  const dockedMs = truth.endMs + 1_800_000;
  const clock = clockOf({ pcMs: dockedMs, gaugeMs: truth.clock.shows(dockedMs) });
  const takes = truth.readings.map(
    ({ forceN, clockMs }, i): Take => ({
      valueN: Math.round(forceN / 10) * 10,
      atMs: correctedMs(clock, clockMs),
      location: located ? String(locations[i]) : undefined,
      kind: "held",
      refused: undefined,
    }),
  );
  const match = matchRound(takes, stops, {
    order: clockJumps(takes.map((t) => t.atMs)).order,
    ordered: true,
    fromMs: truth.trueMs[0]! - 3_600_000,
    toMs: dockedMs,
  });
  const asked = new Set(match.questions.flatMap((q) => q.takes));
  const far = (a: number, b: number) => Math.abs(Math.log(a / b)) >= 3 * scatter;
  const apart = spindles.map((s, i) => spindles.every((o, k) => k === i || far(o.forceN, s.forceN)));
  const told = closePairs(stops).map((close) => close.length === 0);
  for (const visit of match.visits) {
    for (const at of visit.takes) {
      const owner = owners[at]!;
      const right = visit.stop === owner;
      const silent = !asked.has(at);
      if (right) sum.proposed += 1;
      if (silent && !right) sum.wrongSilent += 1;
      if (!silent || !right) continue;
      sum.right += 1;
      if (apart[owner]) sum.rightApart += 1;
      if (told[owner]) sum.rightTold += 1;
    }
  }
  sum.takes += takes.length;
  sum.told += owners.filter((owner) => told[owner]).length;
  sum.apart += owners.filter((owner) => apart[owner]).length;
}
