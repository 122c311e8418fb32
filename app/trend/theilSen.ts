import { type KendallCounts, kendallCounts } from "../numerics/kendallCounts.ts";
import { kendallVariance } from "../numerics/kendallVariance.ts";
import { median } from "../numerics/median.ts";
import { normalQuantile } from "../numerics/normalQuantile.ts";
import { pairwiseSlopes } from "../numerics/pairwiseSlopes.ts";

export type RobustLine = {
  /** Unit of y per unit of x. */
  readonly slope: number;
  /** Median of y less slope times median of x. */
  readonly intercept: number;
  /** Ends of the interval of the slope; undefined where so few pairs reach no end at that confidence. */
  readonly low: number | undefined;
  readonly high: number | undefined;
  /** The same ends with the ranks rounded instead of interpolated between. */
  readonly lowRounded: number | undefined;
  readonly highRounded: number | undefined;
  readonly confidence: number;
};

/**
 * The line through a history that a third of bad checks cannot tilt: its slope is the median of the slopes of all
 * pairs. The slope's interval comes from the variance of Kendall's S: with C = z sqrt(VarS), its ends are the slopes
 * of rank (N - C)/2 and (N + C)/2 + 1 of N; between whole ranks `low` and `high` interpolate, as one half of the
 * published programs does, `lowRounded` and `highRounded` round, as the other half does.
 * @param x  each finite; any order
 * @param y  as many as `x`, each finite
 * @param confidence  two-sided, above 0 and below 1
 * @param counts  when they are known already
 * @returns  undefined where all x are equal: a line has no slope there
 * @throws RangeError  lengths differ, no value, or one that is not finite
 * @see P. K. Sen, JASA 63 (1968) 1379; EPA 530/R-09-007 17.3.3
 */
export function theilSen(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  confidence = 0.95,
  counts: KendallCounts = kendallCounts(x, y),
): RobustLine | undefined {
  const pairs = counts.pairs - counts.tiesX.pairs;
  if (pairs < 1) return undefined;
  const reach = -normalQuantile((1 - confidence) / 2) * Math.sqrt(kendallVariance(counts));
  const places = {
    below: Math.ceil(pairs / 2),
    above: Math.floor(pairs / 2) + 1,
    low: (pairs - reach) / 2,
    high: (pairs + reach) / 2 + 1,
  };
  const ranks = [places.below, places.above];
  for (const place of [places.low, places.high]) {
    if (place >= 1 && place <= pairs) ranks.push(Math.floor(place), Math.ceil(place));
  }
  const unique = [...new Set(ranks)];
  const slopes = pairwiseSlopes(x, y, unique);
  const at = (rank: number) => slopes[unique.indexOf(rank)]!;
  const slope = at(places.below) + (at(places.above) - at(places.below)) / 2;
  const end = (place: number, rounded: boolean) => {
    if (!(place >= 1 && place <= pairs)) return undefined;
    if (rounded) return at(Math.round(place));
    const below = at(Math.floor(place));
    return below + (place - Math.floor(place)) * (at(Math.ceil(place)) - below);
  };
  return {
    slope,
    intercept: median(y) - slope * median(x),
    low: end(places.low, false),
    high: end(places.high, false),
    lowRounded: end(places.low, true),
    highRounded: end(places.high, true),
    confidence,
  };
}
