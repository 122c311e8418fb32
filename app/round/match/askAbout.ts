import type { Take, TakeGroup } from "../take/Take.ts";
import { closePairs } from "./closePairs.ts";
import { CORE, distance, surprise } from "./likelihood.ts";
import type { MatchStop } from "./MatchStop.ts";
import type { GroupMatch } from "./matchGroups.ts";
import type { Proposal, Question, QuestionCode } from "./RoundMatch.ts";

/** Odds that must stand behind a filing nobody is asked about, as a logarithm; nearly all have far better ones. */
const SURE = Math.log(50);
/** With a location that agrees, the odds against a stray alone must reach this. */
const SURE_WITH_LOCATION = Math.log(100);
/** An exchange of two visits must make their forces this much more likely to be asked about. */
const EXCHANGE = { neighbours: 4.5, others: 9 };
/** Visits this near to one another in time are neighbours: there the wrong location is easily set. */
const APART = 3;
/** A force this near to a neighbour's expectation, and far from its own, may be the neighbour's. */
const NEAR = 2.5;
const NEIGHBOUR = 2;

export type Asked = {
  readonly questions: readonly Question[];
  /** Groups that some question is about. */
  readonly doubted: ReadonlySet<number>;
  /** Groups whose stops change places in the proposal. */
  readonly exchanged: readonly (readonly [number, number])[];
  /** Groups that the proposal leaves out. */
  readonly leftOut: ReadonlySet<number>;
};

/**
 * Every visit that could as well belong elsewhere, whose location its force contradicts, or whose force is not its own, as a
 * question with a proposed answer.
 */
export function askAbout(
  takes: readonly Take[],
  groups: readonly TakeGroup[],
  factors: readonly number[],
  stops: readonly MatchStop[],
  matches: readonly GroupMatch[],
): Asked {
  const questions: Question[] = [];
  const doubted = new Set<number>();
  const ask = (
    code: QuestionCode,
    members: readonly number[],
    at: readonly number[],
    proposal: Proposal,
    factor?: number,
  ) => {
    for (const g of members) doubted.add(g);
    const about = members.flatMap((g) => groups[g]!.takes);
    questions.push({ code, takes: about, stops: at, proposal, ...(factor === undefined ? {} : { factor }) });
  };
  const located = (g: number) => {
    const { stop } = matches[g]!;
    return stop !== undefined && groups[g]!.location !== undefined && groups[g]!.location === stops[stop]!.location;
  };
  for (const [factor, members] of Map.groupBy(groups.keys(), (g) => factors[g]!))
    if (factor !== 1) ask("unitFactor", members, stopsOf(members, matches), "scale", factor);
  const exchanged = [...swappedPairs(groups, stops, matches, located)];
  for (const [g, h] of exchanged) ask("swapped", [g, h], stopsOf([g, h], matches), "swap");
  askAlike(groups, stops, matches, located, ask);
  const leftOut = new Set<number>();
  for (const g of groups.keys()) {
    const { stop, margin, runnerUp } = matches[g]!;
    const { location } = groups[g]!;
    const home = location === undefined ? undefined : stops.find((s) => s.location === location);
    if (keepsMaximum(takes, groups, g, matches, home ?? (stop === undefined ? undefined : stops[stop]))) {
      ask("maximumKept", [g], stop === undefined ? [] : [stop], "measureAgain");
      leftOut.add(g);
    } else if (stop === undefined) {
      ask("belongsNowhere", [g], [], "leaveOut");
      leftOut.add(g);
    } else if (doubted.has(g)) continue;
    else if (home !== undefined && !located(g)) {
      const partner = crossed(groups, stops, matches, g);
      if (partner !== undefined) ask("swapped", [g, partner], stopsOf([g, partner], matches), "swap");
      else ask("wrongLocation", [g], [stops.indexOf(home), stop], "fileAsShown");
    } else if (location !== undefined && home === undefined) ask("unknownLocation", [g], [stop], "fileAsShown");
    else if (located(g)) {
      const other = neighbourThatFits(groups[g]!, stops, stop);
      if (other !== undefined) ask("fitsAnother", [g], [stop, other], "fileAsShown");
      else if (margin < SURE_WITH_LOCATION) ask("unsure", [g], both(stop, runnerUp), "fileAsShown");
    } else if (margin < SURE || !inCore(groups[g]!, stops[stop]!))
      ask("unsure", [g], both(stop, runnerUp), "fileAsShown");
  }
  return { questions, doubted, exchanged, leftOut };
}

const both = (stop: number, runnerUp: number | undefined) => (runnerUp === undefined ? [stop] : [stop, runnerUp]);

/** The visit that lies at the place this one's location names, and whose location names this one's place. */
function crossed(
  groups: readonly TakeGroup[],
  stops: readonly MatchStop[],
  matches: readonly GroupMatch[],
  g: number,
): number | undefined {
  const found = [...groups.keys()].find((h) => {
    const [a, b] = [matches[g]!.stop, matches[h]!.stop];
    if (h === g || a === undefined || b === undefined) return false;
    return stops[a]!.location === groups[h]!.location && stops[b]!.location === groups[g]!.location;
  });
  return found;
}

type Ask = (code: QuestionCode, members: readonly number[], at: readonly number[], proposal: Proposal) => void;

/** Spindles that their forces cannot tell apart, one question for all that hang together; a location settles it. */
function askAlike(
  groups: readonly TakeGroup[],
  stops: readonly MatchStop[],
  matches: readonly GroupMatch[],
  located: (g: number) => boolean,
  ask: Ask,
): void {
  const open = [...groups.keys()].filter((g) => matches[g]!.stop !== undefined && !located(g));
  if (open.length === 0) return;
  const close = closePairs(stops);
  const done = new Set<number>();
  for (const start of new Set(open.map((g) => matches[g]!.stop!))) {
    if (done.has(start) || close[start]!.length === 0) continue;
    const cluster = [start];
    done.add(start);
    for (const j of cluster) {
      for (const k of close[j]!) {
        if (done.has(k)) continue;
        done.add(k);
        cluster.push(k);
      }
    }
    const members = open.filter((g) => cluster.includes(matches[g]!.stop!));
    ask("alike", members, cluster, "fileAsShown");
  }
}

/** Pairs of visits whose forces fit much better the other way round than by their locations. */
function* swappedPairs(
  groups: readonly TakeGroup[],
  stops: readonly MatchStop[],
  matches: readonly GroupMatch[],
  located: (g: number) => boolean,
): Generator<readonly [number, number]> {
  const open = [...groups.keys()].filter(located);
  const odds = (g: number, j: number) => surprise(groups[g]!.meanN, stops[j]!.expected);
  for (const [i, g] of open.entries()) {
    for (const h of open.slice(i + 1)) {
      const [a, b] = [matches[g]!.stop!, matches[h]!.stop!];
      const enough = h - g <= APART ? EXCHANGE.neighbours : EXCHANGE.others;
      if (a !== b && odds(g, a) + odds(h, b) - odds(g, b) - odds(h, a) > enough) yield [g, h];
    }
  }
}

function inCore({ meanN }: TakeGroup, { expected }: MatchStop): boolean {
  return expected !== undefined && Math.abs(distance(meanN, expected)) < CORE;
}

function neighbourThatFits(group: TakeGroup, stops: readonly MatchStop[], stop: number): number | undefined {
  if (stops[stop]!.expected === undefined || inCore(group, stops[stop]!)) return undefined;
  const near = (j: number) => {
    const expected = stops[j]?.expected;
    return j !== stop && expected !== undefined && Math.abs(distance(group.meanN, expected)) < NEAR;
  };
  for (let step = 1; step <= NEIGHBOUR; step += 1) {
    if (near(stop - step)) return stop - step;
    if (near(stop + step)) return stop + step;
  }
  return undefined;
}

/** The figure of the visit before, to the digit, on a spindle that is expected to show less, or with no other visit to it. */
function keepsMaximum(
  takes: readonly Take[],
  groups: readonly TakeGroup[],
  g: number,
  matches: readonly GroupMatch[],
  home: MatchStop | undefined,
): boolean {
  if (g === 0) return false;
  const own = groups[g]!.takes.map((t) => takes[t]!);
  const before = groups[g - 1]!.takes.map((t) => takes[t]!.valueN!);
  const greatest = before.reduce((a, b) => Math.max(a, b));
  if (!own.some((t) => t.valueN === greatest && t.kind !== "live")) return false;
  if (home?.expected !== undefined && distance(groups[g]!.meanN, home.expected) > CORE) return true;
  const { stop } = matches[g]!;
  return groups[g]!.location === undefined && stop !== undefined && stop === matches[g - 1]!.stop;
}

const stopsOf = (members: readonly number[], matches: readonly GroupMatch[]) =>
  members.flatMap((g) => matches[g]!.stop ?? []);
