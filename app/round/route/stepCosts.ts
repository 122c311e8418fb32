import type { RouteStop } from "./Route.ts";

/** Going to another area counts as so many machines passed; common practice, no source. */
export const AREA_WALK = 10;

/** More than any walk, so that an adapter change is never traded for a shorter way. */
export const CHANGE = 1e6;

/**
 * What it costs to go from each stop to each other: machines passed, a change of area, and an adapter change. A metric:
 * no detour is ever shorter. Spindles of one machine lie at one place.
 * @returns  row by row, n x n, symmetric
 */
export function stepCosts(stops: readonly RouteStop[]): Float64Array {
  const n = stops.length;
  const place = placesOf(stops);
  const cost = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1) {
    for (let j = 0; j < n; j += 1) {
      const [a, b] = [stops[i]!, stops[j]!];
      const walk = Math.abs(place[i]! - place[j]!) + (a.area === b.area ? 0 : AREA_WALK);
      cost[i * n + j] = walk + (a.tool === b.tool ? 0 : CHANGE);
    }
  }
  return cost;
}

/** Stated positions; a machine without one stands behind the last of its area, by name. */
function placesOf(stops: readonly RouteStop[]): readonly number[] {
  const byMachine = new Map<string, number>();
  const key = (stop: RouteStop) => `${stop.area}\n${stop.machine || stop.spindleId}`;
  for (const stop of stops) {
    if (stop.order === undefined) continue;
    byMachine.set(key(stop), Math.min(stop.order, byMachine.get(key(stop)) ?? Number.POSITIVE_INFINITY));
  }
  const unplaced = [...new Set(stops.map(key))].filter((k) => !byMachine.has(k)).sort();
  for (const k of unplaced) {
    const area = k.slice(0, k.indexOf("\n"));
    const known = [...byMachine].filter(([other]) => other.startsWith(`${area}\n`)).map(([, at]) => at);
    byMachine.set(k, known.length === 0 ? 0 : Math.max(...known) + 1);
  }
  return stops.map((stop) => byMachine.get(key(stop))!);
}
