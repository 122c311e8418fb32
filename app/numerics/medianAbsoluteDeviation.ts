import { medianInPlace } from "./median.ts";

/**
 * Median distance from the median: a scale that half of all readings may spoil before it breaks.
 * Not scaled; `normalPerMad` of it estimates the standard deviation of normal noise.
 * @param values  in one unit, each finite; one or more
 * @returns  the median absolute deviation, in the unit of `values`
 * @throws RangeError  no value, or one that is not finite
 * @see NIST/SEMATECH e-Handbook 1.3.5.6
 */
export function medianAbsoluteDeviation(values: ArrayLike<number>): number {
  const scratch = Float64Array.from(values);
  for (const v of scratch)
    if (!Number.isFinite(v)) throw new RangeError("medianAbsoluteDeviation requires finite values");
  const middle = medianInPlace(scratch);
  for (let i = 0; i < scratch.length; i += 1) scratch[i] = Math.abs(scratch[i]! - middle);
  return medianInPlace(scratch);
}

/** Standard deviation of normal noise over its median absolute deviation: 1 / normalQuantile(0.75). */
export const normalPerMad = 1.4826022185056018;
