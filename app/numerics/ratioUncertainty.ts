/**
 * Standard uncertainty of a ratio a/b of two measured values whose errors may be partly the same.
 * @param a  numerator
 * @param uA  its standard uncertainty, in the unit of a
 * @param b  denominator, not 0
 * @param uB  its standard uncertainty, in the unit of b
 * @param correlation  of the two errors, -1 to 1; 1 where both share one relative error
 * @returns  in units of a/b; 0 or more
 * @throws RangeError  b is 0, a negative uncertainty, a correlation outside -1 to 1
 * @see JCGM 100:2008 (GUM) 5.2.2, eq. 16; annex H.2 has such a ratio (Z = V/I)
 */
export function ratioUncertainty(a: number, uA: number, b: number, uB: number, correlation: number): number {
  if (b === 0 || !(uA >= 0 && uB >= 0))
    throw new RangeError("ratioUncertainty requires a denominator and uncertainties of 0 and more");
  if (!(Math.abs(correlation) <= 1))
    throw new RangeError(`ratioUncertainty requires a correlation from -1 to 1, got ${correlation}`);
  const byA = uA / b;
  const byB = (a * uB) / (b * b);
  // Rounding may leave a variance just below 0 where the two errors cancel whole.
  return Math.sqrt(Math.max(0, byA * byA + byB * byB - 2 * correlation * byA * byB));
}
