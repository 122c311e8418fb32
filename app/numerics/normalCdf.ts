import { erf } from "./erf.ts";
import { expMinusHalfSquare } from "./expMinusHalfSquare.ts";
import { scaledErfc } from "./scaledErfc.ts";

/**
 * Probability that a standard normal variable is at most z. For the upper tail call it with -z: 1 - normalCdf(z)
 * would cancel the digits away.
 * @param z  in standard deviations; the infinities are taken
 * @returns  0 to 1; relative error below 1e-14 down to 1e-307, below that as fine as a double can be
 * @throws RangeError  z is not a number
 * @see JCGM 106:2012 7.2 (what it is used for); Abramowitz and Stegun 26.2.29 (link to erfc)
 */
export function normalCdf(z: number): number {
  if (Math.abs(z) < 0.7) return 0.5 + 0.5 * erf(z * Math.SQRT1_2); // exactly one half at 0
  const below = 0.5 * expMinusHalfSquare(z) * scaledErfc(Math.abs(z) * Math.SQRT1_2);
  return z > 0 ? 1 - below : below;
}
