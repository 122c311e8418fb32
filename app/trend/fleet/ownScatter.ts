import { median } from "../../numerics/median.ts";
import type { Track } from "./fleetTracks.ts";

const MONTH_MS = 30 * 86_400_000;
const NORMAL_PER_MEDIAN = 1.4826022; // standard deviation of normal noise over its median distance from 0

/** Scatter between checks and how many differences it rests on. */
export type OwnScatter = { readonly sigma: number; readonly degreesOfFreedom: number };

/**
 * Standard deviation between checks, a fraction, from the differences of neighbours, without what spindles did
 * together: of each difference the median of the others that end in the same month with the same gauge and adapter
 * is taken out. A gauge gone off would else pass for scatter, and hide itself. Differences beyond three and a half
 * robust standard deviations are steps, not scatter.
 * @returns  sigma 0 where no track has two checks
 */
export function ownScatter(tracks: readonly Track[]): OwnScatter {
  const rests = ownDifferences(tracks);
  if (rests.length === 0) return { sigma: 0, degreesOfFreedom: 0 };
  const robust = NORMAL_PER_MEDIAN * median(rests.map(Math.abs));
  const usual = rests.filter((d) => Math.abs(d) <= 3.5 * robust);
  const variance = usual.reduce((sum, d) => sum + d * d, 0) / usual.length;
  // Neighbouring differences share a check: three of them tell about as much as two independent ones.
  return { sigma: Math.sqrt(variance / 2), degreesOfFreedom: (2 / 3) * usual.length };
}

/** Scaled so that each has the spread of a difference of two checks. */
function ownDifferences(tracks: readonly Track[]): number[] {
  const together = new Map<number, number[]>();
  const slowest: number[] = [];
  for (const { t, r, gauges, adapters } of tracks) {
    for (let i = 1; i < r.length; i += 1) {
      // A works has fewer than a thousand of either; more would share their months, which does no harm.
      const key = Math.floor(t[i]! / MONTH_MS) * 1e6 + (gauges[i]! % 1000) * 1000 + (adapters[i]! % 1000);
      const steps = together.get(key);
      if (steps === undefined) together.set(key, [r[i]! - r[i - 1]!]);
      else steps.push(r[i]! - r[i - 1]!);
    }
  }
  const rests: number[] = [];
  for (const steps of together.values()) {
    if (steps.length < 3) slowest.push(...steps);
    else rests.push(...withoutOthers(steps));
  }
  return rests.length >= 5 ? rests : [...rests, ...slowest];
}

/** Each less the median of the others; that adds pi/2 over their number to the variance (1 over it for two). */
function withoutOthers(steps: readonly number[]): number[] {
  const n = steps.length;
  const sorted = Float64Array.from(steps).sort();
  const scale = 1 / Math.sqrt(1 + (n === 3 ? 1 : Math.PI / 2) / (n - 1));
  return steps.map((step) => (step - medianWithout(sorted, step)) * scale);
}

function medianWithout(sorted: Float64Array, value: number): number {
  const n = sorted.length;
  const own = sorted.indexOf(value);
  const at = (k: number) => sorted[k < own ? k : k + 1]!;
  const half = (n - 1) >> 1;
  return (n - 1) % 2 === 1 ? at(half) : (at(half - 1) + at(half)) / 2;
}
