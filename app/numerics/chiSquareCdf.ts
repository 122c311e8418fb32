import { deviance } from "./deviance.ts";
import { stirlingError } from "./stirlingError.ts";

/**
 * Probability that chi-square lies below (or, in full digits too, above) a value: the regularized incomplete gamma
 * function, as a series below the mean and a continued fraction above it.
 * @param chiSquare  0 or more
 * @param degreesOfFreedom  0.02 or more
 * @param side  which tail is wanted
 * @returns  0 to 1
 * @throws RangeError  a negative value, or degrees of freedom below 0.02
 * @see Abramowitz and Stegun 26.4.19, 6.5.29 and 6.5.31
 */
export function chiSquareCdf(chiSquare: number, degreesOfFreedom: number, side: "below" | "above" = "below"): number {
  if (!(chiSquare >= 0)) throw new RangeError(`chiSquareCdf requires a value of 0 or more, got ${chiSquare}`);
  if (!(degreesOfFreedom >= 0.02))
    throw new RangeError(`chiSquareCdf requires degrees of freedom, got ${degreesOfFreedom}`);
  const x = 0.5 * chiSquare;
  const a = 0.5 * degreesOfFreedom;
  if (x === 0 || x === Number.POSITIVE_INFINITY) return (x === 0) === (side === "below") ? 0 : 1;
  const weight = Math.sqrt(a / (2 * Math.PI)) * Math.exp(-deviance(a, x) - stirlingError(a));
  if (x < a + 1) {
    const below = (weight * series(a, x)) / a;
    return side === "below" ? below : 1 - below;
  }
  const above = weight * fraction(a, x);
  return side === "above" ? above : 1 - above;
}

function series(a: number, x: number): number {
  let term = 1;
  let sum = 1;
  for (let n = 1; term > sum * 1e-17; n += 1) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

/** Lentz's method on 1/(x + 1 - a - 1(1 - a)/(x + 3 - a - ...)). */
function fraction(a: number, x: number): number {
  let b = x + 1 - a;
  let c = 1e300;
  let d = 1 / b;
  let h = d;
  for (let n = 1; n < 1_000_000; n += 1) {
    const an = -n * (n - a);
    b += 2;
    d = 1 / guard(an * d + b);
    c = guard(b + an / c);
    h *= c * d;
    if (Math.abs(c * d - 1) < 2e-16) return h;
  }
  throw new RangeError(`chiSquareCdf does not converge for ${2 * a} degrees of freedom`);
}

const guard = (v: number) => (Math.abs(v) < 1e-300 ? 1e-300 : v);
