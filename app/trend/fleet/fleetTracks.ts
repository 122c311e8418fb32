import { median } from "../../numerics/median.ts";
import type { History } from "../History.ts";
import { serviceCuts } from "../serviceCuts.ts";
import { ownScatter } from "./ownScatter.ts";
import { type UsualSlope, usualSlope } from "./usualSlope.ts";

/** One spindle between two services. */
export type Track = {
  readonly spindleId: string;
  /** Ascending. */
  readonly t: Float64Array;
  /** Value over the track's median, less 1. */
  readonly r: Float64Array;
  readonly gauges: readonly (string | undefined)[];
  readonly adapters: readonly (string | undefined)[];
};

export type FleetTracks = {
  readonly tracks: readonly Track[];
  /** Standard deviation between checks, a fraction, the same for all. */
  readonly sigma: number;
  /** How well it is known. */
  readonly degreesOfFreedom: number;
  /** What spindles lose on the usual. */
  readonly usual: UsualSlope;
};

/** Under this nothing is scatter any more: rounding of a coarse gauge. */
const LEAST_SIGMA = 1e-4;

/**
 * All spindles on one scale: relative to their own level, cut at their services, with the scatter between checks
 * and the usual loss of force pooled over the works (medians: a few spindles in trouble do not move them).
 * @returns  undefined where no track has two checks
 */
export function fleetTracks(histories: readonly History[]): FleetTracks | undefined {
  const tracks = histories.flatMap(tracksOf);
  if (tracks.length === 0) return undefined;
  const own = ownScatter(tracks);
  const sigma = Math.max(LEAST_SIGMA, own.sigma);
  return { tracks, sigma, degreesOfFreedom: own.degreesOfFreedom, usual: usualSlope(tracks) };
}

function tracksOf(history: History): Track[] {
  const points = [...history.points].sort((a, b) => a.atMs - b.atMs);
  const edges = [0, ...serviceCuts(points, history.events).map((c) => c.firstAfter), points.length];
  const tracks: Track[] = [];
  for (let k = 0; k + 1 < edges.length; k += 1) {
    const own = points.slice(edges[k], edges[k + 1]);
    if (own.length < 2) continue;
    const level = median(own.map((p) => p.valueN));
    if (!(level > 0)) continue;
    tracks.push({
      spindleId: history.spindleId,
      t: Float64Array.from(own, (p) => p.atMs),
      r: Float64Array.from(own, (p) => p.valueN / level - 1),
      gauges: own.map((p) => p.gaugeId),
      adapters: own.map((p) => p.adapterId),
    });
  }
  return tracks;
}
