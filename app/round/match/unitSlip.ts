import type { Take, TakeGroup } from "../take/Take.ts";
import { CORE, distance, surprise } from "./likelihood.ts";
import type { MatchStop } from "./MatchStop.ts";

/** What a force is off by when its unit was taken for another: lbf, kgf, daN, hN or kN for N, and the other way round. */
export const unitFactors: readonly number[] = [4.4482216152605, 9.80665, 10, 100, 1000].flatMap((f) => [f, 1 / f]);

/** By so much more likely, as a logarithm, a factor over all takes must be. */
const CLEARLY = 12;
const MOST_OF_THEM = 0.6;

/**
 * The factor by which all forces of a memory seem to be off: the gauge was set to another unit than the one assumed.
 * @returns  what to multiply with; undefined: the forces are as expected
 */
export function commonUnitSlip(takes: readonly Take[], stops: readonly MatchStop[]): number | undefined {
  const readings = takes.flatMap(({ valueN, location }) =>
    valueN !== undefined && valueN > 0 ? [{ meanN: valueN, location }] : [],
  );
  if (readings.length === 0 || stops.length === 0) return undefined;
  const cost = (f: number) =>
    readings.reduce(
      (sum, r) => sum + Math.min(...candidates(r, stops).map((s) => surprise(f * r.meanN, s.expected))),
      0,
    );
  const best = unitFactors.reduce((a, f) => (cost(f) < cost(a) ? f : a), 1);
  if (best === 1 || cost(1) - cost(best) < CLEARLY) return undefined;
  const fitting = readings.filter((r) => fits(best * r.meanN, candidates(r, stops)));
  return fitting.length >= MOST_OF_THEM * readings.length ? best : undefined;
}

/**
 * The factor by which one visit seems to be off, where as it stands it fits none of the spindles it may belong to.
 * @returns  undefined: it fits, or no factor makes it fit
 */
export function unitSlip(group: TakeGroup, stops: readonly MatchStop[]): number | undefined {
  const open = candidates(group, stops);
  if (open.some((s) => s.expected === undefined) || open.length === 0 || fits(group.meanN, open)) return undefined;
  // A fall to half is a spindle in trouble, not a unit; units are off by more.
  const nearest = Math.min(...open.map((s) => Math.abs(Math.log(group.meanN / s.expected!.forceN))));
  if (nearest < Math.log(3)) return undefined;
  const factors = unitFactors.filter((f) => fits(f * group.meanN, open));
  const worth = (f: number) => Math.min(...open.map((s) => surprise(f * group.meanN, s.expected)));
  return factors.length === 0 ? undefined : factors.reduce((a, f) => (worth(f) < worth(a) ? f : a));
}

/** The stop of its location where it has one, else all. */
function candidates({ location }: Pick<TakeGroup, "location">, stops: readonly MatchStop[]): readonly MatchStop[] {
  const own = location === undefined ? [] : stops.filter((s) => s.location === location);
  return own.length > 0 ? own : stops;
}

const fits = (forceN: number, stops: readonly MatchStop[]) =>
  stops.some((s) => s.expected !== undefined && Math.abs(distance(forceN, s.expected)) < CORE);
