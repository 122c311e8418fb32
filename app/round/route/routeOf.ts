import { EXACT_GROUP, EXACT_GROUPS, exactPath } from "./exactPath.ts";
import { goodPath } from "./goodPath.ts";
import { pathCost } from "./improvePath.ts";
import type { Route, RouteStop } from "./Route.ts";
import { CHANGE, stepCosts } from "./stepCosts.ts";

/**
 * The order in which to walk a round: fewest adapter changes, and of those the shortest walk, area by area and machine by
 * machine. Begins at the end with the lower position, so that a round starts where the numbering does.
 * @param weigh  `good` leaves out the exact way, for tests of the other one
 */
export function routeOf(stops: readonly RouteStop[], weigh: "exact" | "good" = "exact"): Route {
  const n = stops.length;
  if (n === 0) return { sequence: [], found: "exact", adapterChanges: 0, walk: 0 };
  const cost = stepCosts(stops);
  const groups = [...Map.groupBy(stops.keys(), (i) => stops[i]!.tool).values()];
  const exact = weigh === "exact" && groups.length <= EXACT_GROUPS && groups.every((g) => g.length <= EXACT_GROUP);
  const sequence = exact ? exactPath(cost, n, groups) : goodPath(cost, n, startsOf(stops, groups));
  const total = pathCost(sequence, cost, n);
  const place = (i: number) => stops[i]!.order ?? Number.POSITIVE_INFINITY;
  if (place(sequence[0]!) > place(sequence.at(-1)!)) sequence.reverse();
  const adapterChanges = Math.floor(total / CHANGE);
  return { sequence, found: exact ? "exact" : "good", adapterChanges, walk: total - adapterChanges * CHANGE };
}

/** Tool by tool, each by area and position: groups in the order they appear, by where they begin, and the other way round. */
function startsOf(stops: readonly RouteStop[], groups: readonly (readonly number[])[]): number[][] {
  const place = (i: number) => stops[i]!.order ?? Number.POSITIVE_INFINITY;
  const byPlace = (a: number, b: number) =>
    (stops[a]!.area < stops[b]!.area ? -1 : stops[a]!.area > stops[b]!.area ? 1 : 0) || compare(place(a), place(b));
  const sorted = groups.map((group) => [...group].sort(byPlace));
  const byFirst = [...sorted].sort((a, b) => byPlace(a[0]!, b[0]!));
  const snake = byFirst.map((group, k) => (k % 2 === 1 ? [...group].reverse() : group));
  return [sorted.flat(), byFirst.flat(), snake.flat(), [...groups].reverse().flat()];
}

const compare = (a: number, b: number) => (a < b ? -1 : a > b ? 1 : 0);
