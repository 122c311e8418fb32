import { median } from "../../numerics/median.ts";
import type { CoursePoint, History } from "../History.ts";
import { inTime } from "../inTime.ts";
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
  /** Place of each check's gauge in the list of all, -1 for none; numbers, since strings as keys cost most of the time. */
  readonly gauges: Int32Array;
  readonly adapters: Int32Array;
};

export type FleetTracks = {
  readonly tracks: readonly Track[];
  readonly gaugeIds: readonly string[];
  readonly adapterIds: readonly string[];
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
export function fleetTracks(histories: readonly History<CoursePoint>[]): FleetTracks | undefined {
  const gauges = new Map<string, number>();
  const adapters = new Map<string, number>();
  const tracks = histories.flatMap((history) => tracksOf(history, gauges, adapters));
  if (tracks.length === 0) return undefined;
  const own = ownScatter(tracks);
  return {
    tracks,
    gaugeIds: [...gauges.keys()],
    adapterIds: [...adapters.keys()],
    sigma: Math.max(LEAST_SIGMA, own.sigma),
    degreesOfFreedom: own.degreesOfFreedom,
    usual: usualSlope(tracks),
  };
}

function tracksOf(history: History<CoursePoint>, gauges: Map<string, number>, adapters: Map<string, number>): Track[] {
  const points = inTime(history.points);
  const edges = [0, ...serviceCuts(points, history.events).map((c) => c.firstAfter), points.length];
  const tracks: Track[] = [];
  for (let k = 0; k + 1 < edges.length; k += 1) {
    const from = edges[k]!;
    const n = edges[k + 1]! - from;
    if (n < 2) continue;
    const track = {
      spindleId: history.spindleId,
      t: new Float64Array(n),
      r: new Float64Array(n),
      gauges: new Int32Array(n),
      adapters: new Int32Array(n),
    };
    for (let i = 0; i < n; i += 1) {
      const point = points[from + i]!;
      track.t[i] = point.atMs;
      track.r[i] = point.valueN;
      track.gauges[i] = placeOf(gauges, point.gaugeId);
      track.adapters[i] = placeOf(adapters, point.adapterId);
    }
    const level = median(track.r);
    if (!(level > 0)) continue;
    for (let i = 0; i < n; i += 1) track.r[i] = track.r[i]! / level - 1;
    tracks.push(track);
  }
  return tracks;
}

function placeOf(places: Map<string, number>, id: string | undefined): number {
  if (id === undefined) return -1;
  const known = places.get(id);
  if (known !== undefined) return known;
  places.set(id, places.size);
  return places.size - 1;
}
