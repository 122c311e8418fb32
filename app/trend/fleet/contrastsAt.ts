import type { Factor } from "./factorsOf.ts";
import type { FleetTracks, Track } from "./fleetTracks.ts";

/** One spindle's checks after a date against those before. */
export type Contrast = {
  readonly spindleId: string;
  /** Place of the adapter of the first check after the date. */
  readonly adapter: number;
  /** After less what the checks before foretell, as a fraction. */
  readonly shift: number;
  /** The same in its own standard deviations. */
  readonly z: number;
  /** What an error of the usual slope, which all spindles share, does to z. */
  readonly shared: number;
};

/** Checks used on each side of the date: enough for a level, few enough to be near it. */
const BEFORE = 5;
const AFTER = 3;
/** How much spindles differ in what they lose: standard deviation, fraction per millisecond (1 % a year; common practice, no source). */
const SLOPE_SPREAD = 0.01 / (365.25 * 86_400_000);

/**
 * What each spindle did at a date, by the checks with this gauge or adapter after it. Before the date its own checks
 * count where there are any, else those with others: a gauge newly taken into use is compared with what it replaced.
 * A spindle's slope is its own as far as its checks tell it, else the usual one of the works.
 * @param without  the other way round: only checks made without it, on both sides
 */
export function contrastsAt(fleet: FleetTracks, factor: Factor, date: number, without = false): Contrast[] {
  const found: Contrast[] = [];
  for (const track of without ? fleet.tracks : factor.tracks) {
    const places = factor.by === "gauge" ? track.gauges : track.adapters;
    const after: number[] = [];
    const own: number[] = [];
    const foreign: number[] = [];
    const split = firstFrom(track.t, date);
    for (let i = split; i < track.t.length && after.length < AFTER; i += 1) {
      if ((places[i] === factor.place) !== without) after.push(i);
    }
    if (after.length === 0) continue;
    for (let i = split - 1; i >= 0 && own.length < BEFORE; i -= 1) {
      if ((places[i] === factor.place) !== without) own.push(i);
      else if (!without && foreign.length < BEFORE) foreign.push(i);
    }
    const before = own.length > 0 ? own : foreign;
    if (before.length > 0) found.push(contrast(fleet, track, before, after));
  }
  return found;
}

function firstFrom(t: Float64Array, date: number): number {
  let low = 0;
  let high = t.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (t[middle]! < date) low = middle + 1;
    else high = middle;
  }
  return low;
}

function contrast(fleet: FleetTracks, track: Track, before: readonly number[], after: readonly number[]): Contrast {
  const { sigma, usual } = fleet;
  const old = middleOf(track, before);
  const now = middleOf(track, after);
  let sxx = 0;
  let sxy = 0; // about the usual slope
  for (const i of before) {
    const dt = track.t[i]! - old.t;
    sxx += dt * dt;
    sxy += dt * (track.r[i]! - old.r - usual.slope * dt);
  }
  // The own slope, held to the usual one as strongly as slopes are alike.
  const prior = (sigma * sigma) / (SLOPE_SPREAD * SLOPE_SPREAD);
  const held = sxx + prior;
  const slope = usual.slope + sxy / held;
  const apart = now.t - old.t;
  const shift = now.r - old.r - slope * apart;
  const variance = sigma * sigma * (1 / before.length + 1 / after.length + (apart * apart) / held);
  const standard = Math.sqrt(variance);
  const shared = (usual.standard * apart * (prior / held)) / standard;
  return { spindleId: track.spindleId, adapter: track.adapters[after[0]!]!, shift, z: shift / standard, shared };
}

function middleOf(track: Track, places: readonly number[]): { t: number; r: number } {
  let t = 0;
  let r = 0;
  for (const i of places) {
    t += track.t[i]!;
    r += track.r[i]!;
  }
  return { t: t / places.length, r: r / places.length };
}
