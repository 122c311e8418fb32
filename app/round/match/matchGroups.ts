import { type Assignment, assignment } from "../../numerics/assignment.ts";
import { assignmentWithout } from "../../numerics/assignmentWithout.ts";
import type { TakeGroup } from "../take/Take.ts";
import { surprise, unknownSurprise } from "./likelihood.ts";
import type { MatchStop } from "./MatchStop.ts";

/** Where one visit belongs, and how far the next best place for it lies behind. */
export type GroupMatch = {
  /** Position of the stop; undefined: it belongs to none of them. */
  readonly stop: number | undefined;
  /** The stop has an earlier visit too. */
  readonly again: boolean;
  /** Natural logarithm of the odds against the best answer in which this visit belongs elsewhere. */
  readonly margin: number;
  /** The stop that would be next; undefined: none. */
  readonly runnerUp: number | undefined;
};

/** Chances, all common practice without a source: a spindle is left out, measured twice, a visit belongs to none, a location is wrong. */
const MISSED = 0.05;
const TWICE = 0.05;
const STRAY = 0.02;
const WRONG_LOCATION = 0.015;
/** A visit with the location of one of the stops is hardly ever a stray. */
const STRAY_WITH_LOCATION = 4;
/** Out of order with one neighbour, and with each further one, at most so much: two of a hundred are swapped. */
const INVERSION = 2;
const FURTHER = 1;
const MOST_OUT_OF_ORDER = 8;
/** Neighbours looked at on either side for the order. */
const NEIGHBOURS = 8;
const PASSES = 3;
/** Half of the neighbours are in order by chance. */
const IN_ORDER = 0.65;

/**
 * Visits and the stops they belong to: the assignment of the whole set with the greatest likelihood, of force, location
 * and order together. Forces come with the spindle's own scatter and a chance that it has changed; the order costs by
 * how many neighbours a visit would be out of turn with, found in a few passes since it depends on where those belong.
 * @param groups  in the order they were taken
 * @param stops  in the order they were to be walked
 * @param ordered  whether that order tells anything
 * @param goOn  called often; what it throws ends the work
 */
export function matchGroups(
  groups: readonly TakeGroup[],
  stops: readonly MatchStop[],
  ordered: boolean,
  goOn: () => void = () => undefined,
): readonly GroupMatch[] {
  if (groups.length === 0) return [];
  const [n, s] = [groups.length, stops.length];
  const columns = 2 * s + n; // a first and a second visit of each stop, and a place apart for each group
  const plain = plainCosts(groups, stops);
  let cost = plain;
  let solved = assignment(cost, n, columns);
  if (ordered && followsOrder(solved, n, s)) {
    for (let pass = 0; pass < PASSES; pass += 1) {
      goOn();
      cost = withOrder(plain, solved, n, s);
      solved = assignment(cost, n, columns);
    }
  }
  return groups.map((_, g) => {
    goOn();
    return matchOf(cost, solved, g, s, columns);
  });
}

/** Whether the round was walked as planned: forces alone put most neighbouring visits in order. */
function followsOrder({ columnOf }: Assignment, n: number, s: number): boolean {
  const places = Array.from({ length: n }, (_, g) => columnOf[g]!).filter((column) => column < s);
  const rising = places.filter((place, i) => i > 0 && place > places[i - 1]!).length;
  return places.length < 4 || rising >= IN_ORDER * (places.length - 1);
}

function plainCosts(groups: readonly TakeGroup[], stops: readonly MatchStop[]): Float64Array {
  const [n, s] = [groups.length, stops.length];
  const columns = 2 * s + n;
  const cost = new Float64Array(n * columns).fill(Number.POSITIVE_INFINITY);
  const locations = new Set(stops.flatMap(({ location }) => location ?? []));
  const first = Math.log(MISSED / (1 - MISSED));
  const second = -Math.log(TWICE);
  for (const [g, { meanN, location }] of groups.entries()) {
    const located = location !== undefined && locations.has(location);
    for (const [j, stop] of stops.entries()) {
      const place = !located
        ? 0
        : stop.location === location
          ? -Math.log(1 - WRONG_LOCATION)
          : Math.log(s / WRONG_LOCATION);
      const fit = surprise(meanN, stop.expected) + place;
      cost[g * columns + j] = fit + first;
      cost[g * columns + s + j] = fit + second;
    }
    cost[g * columns + 2 * s + g] = unknownSurprise - Math.log(STRAY) + (located ? STRAY_WITH_LOCATION : 0);
  }
  return cost;
}

function withOrder(plain: Float64Array, solved: Assignment, n: number, s: number): Float64Array {
  const columns = 2 * s + n;
  const cost = plain.slice();
  const place = Int32Array.from({ length: n }, (_, g) => (solved.columnOf[g]! < s ? solved.columnOf[g]! : -1));
  for (let g = 0; g < n; g += 1) {
    for (let j = 0; j < s; j += 1) {
      let out = 0;
      for (let h = Math.max(0, g - NEIGHBOURS); h < Math.min(n, g + NEIGHBOURS + 1); h += 1) {
        if (h === g || place[h]! < 0) continue;
        if (h < g ? place[h]! > j : place[h]! < j) out += 1;
      }
      const price = out === 0 ? 0 : Math.min(MOST_OUT_OF_ORDER, INVERSION + FURTHER * (out - 1));
      cost[g * columns + j]! += price;
      // A second visit is out of turn by its nature, mostly by a machine or two.
      cost[g * columns + s + j]! += out <= 2 ? 0 : INVERSION;
    }
  }
  return cost;
}

function matchOf(cost: Float64Array, solved: Assignment, g: number, s: number, columns: number): GroupMatch {
  const column = solved.columnOf[g]!;
  const stop = column < 2 * s ? column % s : undefined;
  const own = (j: number) => (stop === undefined ? j === column : j < 2 * s && j % s === stop);
  let runnerUp: number | undefined;
  for (let j = 0; j < s; j += 1) {
    if (j === stop) continue;
    if (runnerUp === undefined || cost[g * columns + j]! < cost[g * columns + runnerUp]!) runnerUp = j;
  }
  const margin = assignmentWithout(cost, columns, solved, g, own);
  return { stop, again: column >= s && column < 2 * s, margin, runnerUp };
}
