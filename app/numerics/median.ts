import { selectInPlace } from "./selectInPlace.ts";

/**
 * Middle of the ordered values; with an even count the mean of the two in the middle. The input stays as it is.
 * @param values  in one unit, each finite; one or more
 * @returns  the median, in the unit of `values`
 * @throws RangeError  no value, or one that is not finite
 * @see NIST/SEMATECH e-Handbook 1.3.5.1
 */
export function median(values: ArrayLike<number>): number {
  const n = values.length;
  const scratch = new Float64Array(n);
  let sound = 0; // stays 0 as long as all are finite; NaN - NaN and Infinity - Infinity are not
  for (let i = 0; i < n; i += 1) {
    const v = values[i]!;
    scratch[i] = v;
    sound += v - v;
  }
  if (sound !== 0) throw new RangeError("median requires finite values");
  return medianInPlace(scratch);
}

/**
 * The same over the leading `length` values, which it reorders: for windows that are copied anyway.
 * @throws RangeError  no value
 */
export function medianInPlace(scratch: Float64Array, length = scratch.length): number {
  if (length < 1) throw new RangeError("median requires at least one value, got 0");
  const half = length >> 1;
  const upper = selectInPlace(scratch, half, length);
  if (length % 2 === 1) return upper;
  let lower = Number.NEGATIVE_INFINITY; // the greatest of those before the middle
  for (let i = 0; i < half; i += 1) if (scratch[i]! > lower) lower = scratch[i]!;
  return lower + (upper - lower) / 2;
}
