import { expMinusHalfSquare } from "../numerics/expMinusHalfSquare.ts";
import { normalCdf } from "../numerics/normalCdf.ts";
import type { Spread } from "./Spread.ts";

/**
 * Probability that the sum of a spread's parts is at most `xN`. Student's t is a bell whose variance is drawn from
 * chi-square, so the sum is an average of bells folded with rectangles, each of which has a closed form; the average
 * runs over the logarithm of chi-square, where a few dozen equal steps leave an error below 2e-6.
 * @param xN  distance from the value, newtons
 * @returns  0 to 1; within 0.002 of a Monte Carlo run by JCGM 101 (see the bench)
 * @see JCGM 101:2008 6.4.9 (scaled t); Abramowitz and Stegun 7.2 (repeated integrals of the bell)
 */
export function spreadBelow(spread: Spread, xN: number): number {
  const { t, restVarianceN2 } = spread;
  if (t === undefined) return clip(bellWithRectangles(spread, xN, Math.sqrt(restVarianceN2)));
  const nu = t.degreesOfFreedom;
  const mode = Math.log(nu);
  const step = Math.min(0.55, 0.95 / Math.sqrt(nu / 2));
  let weights = 0;
  let sum = 0;
  for (let j = -stepsBelow(nu, step); ; j += 1) {
    const weight = Math.exp(0.5 * nu * (j * step) - 0.5 * nu * Math.expm1(j * step));
    if (j > 0 && weight < LEAST) break;
    const variance = restVarianceN2 + t.scaleN * t.scaleN * nu * Math.exp(-mode - j * step);
    weights += weight;
    sum += weight * bellWithRectangles(spread, xN, Math.sqrt(variance));
  }
  return clip(sum / weights);
}

const LEAST = 1e-7;
const INVERSE_ROOT_TWO_PI = 1 / Math.sqrt(2 * Math.PI);
const clip = (p: number) => Math.min(1, Math.max(0, p));

/** Steps below the most likely chi-square until its weight exp(ν(v - e^v + 1)/2) has died away. */
function stepsBelow(nu: number, step: number): number {
  let j = 1;
  while (Math.exp(0.5 * nu * (-j * step - Math.expm1(-j * step))) > LEAST) j += 1;
  return j;
}

/** Bell of `sigma` plus none, one or two rectangles, with the rest's departure from a bell by the first Edgeworth term. */
function bellWithRectangles({ rectanglesN, restCumulantN4 }: Spread, x: number, sigma: number): number {
  const [a, b] = rectanglesN;
  const skew = restCumulantN4 / 24;
  if (sigma === 0) return bareRectangles(x, a ?? 0, b ?? 0);
  if (a !== undefined && sigma > 300 * a) {
    // A rectangle this narrow under the bell only widens it; the differences below would cancel to noise.
    return normalCdf(x / Math.sqrt(sigma * sigma + (a * a + (b ?? 0) ** 2) / 3));
  }
  if (a === undefined) {
    const z = x / sigma;
    return normalCdf(z) + (skew * (3 * z - z * z * z) * bell(z)) / sigma ** 4;
  }
  if (b === undefined) return (once(x + a, sigma, skew) - once(x - a, sigma, skew)) / (2 * a);
  const ends = twice(x + a + b, sigma, skew) - twice(x + a - b, sigma, skew);
  return (ends - twice(x - a + b, sigma, skew) + twice(x - a - b, sigma, skew)) / (4 * a * b);
}

const bell = (z: number) => INVERSE_ROOT_TWO_PI * expMinusHalfSquare(z);

/** Integral of the bell's distribution function, with its fourth derivative's share. */
function once(x: number, sigma: number, skew: number): number {
  const z = x / sigma;
  const height = bell(z);
  return sigma * (z * normalCdf(z) + height) + (skew * (z * z - 1) * height) / sigma ** 3;
}

/** Its second integral. */
function twice(x: number, sigma: number, skew: number): number {
  const z = x / sigma;
  const height = bell(z);
  return 0.5 * sigma * sigma * ((z * z + 1) * normalCdf(z) + z * height) - (skew * z * height) / (sigma * sigma);
}

/** Limit of the above without any bell: b is the narrower, 0 where there is none. */
function bareRectangles(x: number, a: number, b: number): number {
  if (a === 0) return x < 0 ? 0 : x > 0 ? 1 : 0.5;
  if (b === 0) return clip((x + a) / (2 * a));
  const half = (v: number) => 0.5 * Math.max(0, v) ** 2;
  return (half(x + a + b) - half(x + a - b) - half(x - a + b) + half(x - a - b)) / (4 * a * b);
}
