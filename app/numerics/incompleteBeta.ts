import { logBetaWeight } from "./logBetaWeight.ts";

/**
 * Regularized incomplete beta function I_x(a, b): the probability that a beta variable is at most x. Student's t and
 * the F distribution are read from it. The continued fraction is taken on the side of the mean where it converges.
 * @param x  0 to 1
 * @param a  0.01 or more
 * @param b  0.01 or more
 * @param y  1 - x; give it when x was rounded near 1. For the upper tail call incompleteBeta(y, b, a, x).
 * @returns  0 to 1
 * @throws RangeError  x outside 0 to 1, or a or b below 0.01 (where the smaller tail would lose its digits)
 * @see Abramowitz and Stegun 26.5.8; ACM TOMS 18 (1992) 360, algorithm 708, for the choice of side
 */
export function incompleteBeta(x: number, a: number, b: number, y: number = 1 - x): number {
  if (!(x >= 0 && x <= 1)) throw new RangeError(`incompleteBeta requires x from 0 to 1, got ${x}`);
  if (!(a >= 0.01 && b >= 0.01))
    throw new RangeError(`incompleteBeta requires a and b of 0.01 and more, got ${a}, ${b}`);
  if (x === 0 || y === 0) return x === 0 ? 0 : 1;
  const weight = Math.exp(logBetaWeight(x, y, a, b));
  if (x * (a + b + 2) < a + 1) return weight * fraction(x, y, a, b);
  return 1 - weight * fraction(y, x, b, a);
}

/**
 * The continued fraction without its factor, by Lentz's method. This contraction of it uses y and the distance
 * a·y - b·x from the mean, so that x next to 1 (t with very many degrees of freedom) costs no digits.
 */
function fraction(x: number, y: number, a: number, b: number): number {
  const fromMean = a * y - b * x;
  let f = guard((a / (a + 1)) * (fromMean + 1));
  let c = f;
  let d = 0;
  for (let n = 1; n < 1_000_000; n += 1) {
    const at = a + 2 * n;
    const over = n * (b - n) * x;
    const numerator = ((a + n - 1) / (at - 1)) * ((a + b + n - 1) / (at - 1)) * over * x;
    const denominator = n + over / (at - 1) + ((a + n) / (at + 1)) * (fromMean + 1 + n * (1 + y));
    d = 1 / guard(denominator + numerator * d);
    c = guard(denominator + numerator / c);
    f *= c * d;
    if (Math.abs(c * d - 1) < 2e-16) return 1 / f;
  }
  throw new RangeError(`incompleteBeta does not converge for a = ${a}, b = ${b}`);
}

/** A denominator must not be 0. */
const guard = (v: number) => (Math.abs(v) < 1e-300 ? 1e-300 : v);
