import { groupTakes } from "../take/groupTakes.ts";
import { type ScreenedTake, screenTakes } from "../take/screenTakes.ts";
import type { Take, TakeGroup } from "../take/Take.ts";
import { askAbout } from "./askAbout.ts";
import type { MatchStop } from "./MatchStop.ts";
import { matchGroups } from "./matchGroups.ts";
import type { Confidence, Proposal, Question, RoundMatch, Visit } from "./RoundMatch.ts";
import { commonUnitSlip, unitSlip } from "./unitSlip.ts";

export type MatchOptions = {
  /** Positions of the takes, oldest first. */
  readonly order: readonly number[];
  /** Takes before which the gauge's clock was put back. */
  readonly clockPutBack?: readonly number[];
  /** Whether the stops stand in the order they were to be walked. */
  readonly ordered: boolean;
  /** When the round may have been walked. */
  readonly fromMs?: number | undefined;
  readonly toMs?: number | undefined;
  /** Called often on the way: throws when it is to end. */
  readonly goOn?: (() => void) | undefined;
};

/**
 * No day's walk has so many visits: what a memory holds from before them is not matched but asked about at once. Weighing each
 * visit against all others grows with the cube of their number.
 */
const MOST_VISITS = 300;
/** Odds of twenty to one, as a logarithm. */
const LIKELY = Math.log(20);

/**
 * A memory's takes as visits to spindles of a round: slips of single takes first, then repeated takes together, then a wrong
 * unit, then the best assignment of the whole set. Whatever could as well be otherwise comes with a question and a
 * proposed answer; only what is `sure` could be filed without looking.
 */
export function matchRound(takes: readonly Take[], stops: readonly MatchStop[], options: MatchOptions): RoundMatch {
  const expected = stops.flatMap((s) => s.expected?.forceN ?? []);
  const common = commonUnitSlip(takes, stops);
  const { kept, screened } = screenTakes(takes, options.order, {
    leastN: expected.length === stops.length && stops.length > 0 ? smallest(expected) / (common ?? 1) : undefined,
    fromMs: options.fromMs,
    toMs: options.toMs,
  });
  const grouped = groupTakes(takes, kept);
  const older = grouped.slice(0, Math.max(0, grouped.length - Math.max(MOST_VISITS, 2 * stops.length)));
  const found = grouped.slice(older.length);
  const factors = found.map((group) => common ?? unitSlip(group, stops) ?? 1);
  const groups = found.map((group, g): TakeGroup => ({ ...group, meanN: group.meanN * factors[g]! }));
  const matches = matchGroups(groups, stops, options.ordered, options.goOn);
  const asked = askAbout(takes, groups, factors, stops, matches);
  const places = matches.map((m) => m.stop);
  for (const [g, h] of asked.exchanged) [places[g], places[h]] = [places[h], places[g]];
  const visits = groups.map(
    (group, g): Visit => ({
      takes: group.takes,
      meanN: group.meanN,
      stop: places[g],
      runnerUp: matches[g]!.runnerUp,
      confidence: confidenceOf(matches[g]!.margin, asked.doubted.has(g)),
      factor: factors[g]!,
      leftOut: asked.leftOut.has(g),
    }),
  );
  const before = older.length === 0 ? [] : [olderVisit(older)];
  const visited = new Set(visits.filter((v) => !v.leftOut).map((v) => v.stop));
  return {
    visits: [...before, ...visits],
    questions: [
      ...before.map(
        ({ takes: all }): Question => ({ code: "belongsNowhere", takes: all, stops: [], proposal: "leaveOut" }),
      ),
      ...(options.clockPutBack ?? []).map(
        (at): Question => ({ code: "clockPutBack", takes: [at], stops: [], proposal: "orderOnly" }),
      ),
      ...screened.map(questionOf),
      ...asked.questions,
    ],
    missing: [...stops.keys()].filter((j) => !visited.has(j)),
  };
}

/** Everything from before the visits that are matched, as one that belongs to no stop. */
function olderVisit(older: readonly TakeGroup[]): Visit {
  return {
    takes: older.flatMap((group) => group.takes),
    meanN: older.reduce((sum, group) => sum + group.meanN, 0) / older.length,
    stop: undefined,
    runnerUp: undefined,
    confidence: "open",
    factor: 1,
    leftOut: true,
  };
}

function confidenceOf(margin: number, doubted: boolean): Confidence {
  if (!doubted) return "sure";
  return margin >= LIKELY ? "likely" : "open";
}

/** What is small where something else is a hundred times as much is still a spindle's own force, so the least decides. */
const smallest = (values: readonly number[]) => values.reduce((a, b) => Math.min(a, b));

const proposals: Readonly<Record<ScreenedTake["code"], Proposal>> = {
  torque: "leaveOut",
  overload: "leaveOut",
  unreadable: "leaveOut",
  noClamping: "leaveOut",
  dateOutside: "leaveOut",
  valueTwice: "countOnce",
};

function questionOf({ take, code, like }: ScreenedTake): Question {
  return { code, takes: like === undefined ? [take] : [like, take], stops: [], proposal: proposals[code] };
}
