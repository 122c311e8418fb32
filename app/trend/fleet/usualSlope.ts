import { median } from "../../numerics/median.ts";
import { medianAbsoluteDeviation, normalPerMad } from "../../numerics/medianAbsoluteDeviation.ts";
import type { Track } from "./fleetTracks.ts";

const YEAR_MS = 365.25 * 86_400_000;
const MONTH_MS = 30 * 86_400_000;

/** Months with checks that a slope of the works needs: a move all spindles made together must stay one of several. */
const LEAST_MONTHS = 5;

/** A fraction per millisecond, and its standard error: an error all spindles share. */
export type UsualSlope = { readonly slope: number; readonly standard: number };

/** Where too little is known: 1 % a year, give or take as much (common practice, no source). */
const assumed: UsualSlope = Object.freeze({ slope: -0.01 / YEAR_MS, standard: 0.01 / YEAR_MS });

/**
 * What spindles lose on the usual: the median over the months of the median rate between neighbouring checks, each
 * month weighing the same. A gauge gone off makes one month odd, not the slope.
 */
export function usualSlope(tracks: readonly Track[]): UsualSlope {
  const months = new Map<number, number[]>();
  for (const { t, r } of tracks) {
    for (let i = 1; i < r.length; i += 1) {
      if (!(t[i]! > t[i - 1]!)) continue;
      const month = Math.floor(t[i]! / MONTH_MS);
      const rate = (r[i]! - r[i - 1]!) / (t[i]! - t[i - 1]!);
      const rates = months.get(month);
      if (rates === undefined) months.set(month, [rate]);
      else rates.push(rate);
    }
  }
  if (months.size < LEAST_MONTHS) return assumed;
  const rates = [...months.values()].map(median);
  const standard = (MEDIAN_LOSS * normalPerMad * medianAbsoluteDeviation(rates)) / Math.sqrt(rates.length);
  // Weighed together with what is assumed: rates between neighbouring checks are rough.
  const weight = 1 / (1 + (standard / assumed.standard) ** 2);
  return {
    slope: weight * median(rates) + (1 - weight) * assumed.slope,
    standard: assumed.standard * Math.sqrt(1 - weight),
  };
}

/** How much wider a median scatters than a mean. */
const MEDIAN_LOSS = 1.2533;
