import { incompleteBeta } from "./incompleteBeta.ts";

/**
 * Probability that a variance ratio F is at most `f`. The upper tail, a p-value, is fCdf(1 / f, below, above).
 * @param f  0 or more
 * @param above  degrees of freedom of the upper variance, 0.02 or more
 * @param below  degrees of freedom of the lower variance, 0.02 or more
 * @returns  0 to 1
 * @throws RangeError  f negative or not a number, degrees of freedom out of range
 * @see Abramowitz and Stegun 26.6.2
 */
export function fCdf(f: number, above: number, below: number): number {
  if (!(f >= 0)) throw new RangeError(`fCdf requires a ratio of 0 or more, got ${f}`);
  const ratio = (above / below) * f;
  if (ratio === Number.POSITIVE_INFINITY) return 1;
  return incompleteBeta(ratio / (1 + ratio), 0.5 * above, 0.5 * below, 1 / (1 + ratio));
}
