import { deviance } from "./deviance.ts";
import { stirlingError } from "./stirlingError.ts";

/**
 * ln of x^a · y^b / B(a, b), where y = 1 - x: the factor before every series for the incomplete beta function.
 * Built from deviances and Stirling's error, it keeps its digits where a and b are large; ln Γ would lose them.
 * @param x  above 0, below 1
 * @param y  1 - x, in the caller's own digits (x near 1 has lost them)
 * @param a  above 0
 * @param b  above 0
 * @see C. Loader, Fast and accurate computation of binomial probabilities, 2000
 */
export function logBetaWeight(x: number, y: number, a: number, b: number): number {
  const n = a + b;
  const apart = a * y - b * x; // a - n·x = n·y - b, without the cancellation
  const small = stirlingError(n) - stirlingError(a) - stirlingError(b);
  const root = 0.5 * Math.log((a / n) * b * (0.5 / Math.PI));
  return root + small - deviance(a, n * x, apart) - deviance(b, n * y, -apart);
}
