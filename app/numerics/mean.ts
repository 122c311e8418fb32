/**
 * Arithmetic mean. A second pass adds the mean of what rounding left over, so that a large common offset costs no digits.
 * @param values  in one unit, each finite; one or more
 * @returns  the mean, in the unit of `values`
 * @throws RangeError  no value, or one that is not finite
 * @see NIST StRD, univariate summary statistics (certified means)
 */
export function mean(values: ArrayLike<number>): number {
  const n = values.length;
  if (n < 1) throw new RangeError("mean requires at least one value, got 0");
  let sum = 0;
  for (let i = 0; i < n; i += 1) sum += values[i]!;
  if (!Number.isFinite(sum)) throw new RangeError("mean requires finite values");
  const first = sum / n;
  let residual = 0;
  for (let i = 0; i < n; i += 1) residual += values[i]! - first;
  return first + residual / n;
}
