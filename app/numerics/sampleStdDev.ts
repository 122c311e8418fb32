/**
 * Sample standard deviation of repeated readings: our repeatability figure.
 * Deviations are taken about the mean before they are squared, so a large common offset does not cancel the digits
 * away (corrected two-pass form).
 * @param values  readings in one unit, each finite; length n >= 2
 * @returns  s, in the unit of `values`, with n - 1 in the divisor
 * @throws RangeError  fewer than two readings, or one that is not finite
 * @see JCGM 100:2008 (GUM) 4.2.2, eq. 4; The American Statistician 37 (1983) 242
 */
export function sampleStdDev(values: ArrayLike<number>): number {
  const n = values.length;
  if (n < 2) throw new RangeError(`sampleStdDev requires at least two readings, got ${n}`);
  let sum = 0;
  for (let i = 0; i < n; i += 1) sum += values[i]!;
  if (!Number.isFinite(sum)) throw new RangeError("sampleStdDev requires finite readings");
  const mean = sum / n;
  let squares = 0;
  let residual = 0; // zero but for rounding; takes out the mean's own error
  for (let i = 0; i < n; i += 1) {
    const d = values[i]! - mean;
    squares += d * d;
    residual += d;
  }
  return Math.sqrt(Math.max(0, squares - (residual * residual) / n) / (n - 1));
}
