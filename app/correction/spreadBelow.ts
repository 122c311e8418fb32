import { expMinusHalfSquare } from "../numerics/expMinusHalfSquare.ts";
import { normalCdf } from "../numerics/normalCdf.ts";
import { scaledErfc } from "../numerics/scaledErfc.ts";
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
  return clip(average(spread, xN, 0, spread.restVarianceN2));
}

/** Over the steps of the t from place `at` on; `variance` is what the bells before it have. */
function average(spread: Spread, xN: number, at: number, variance: number): number {
  const t = spread.ts[at];
  if (t === undefined) return bellWithRectangles(spread, xN, Math.sqrt(variance));
  const { weights, stretches } = chiSquareSteps(t.degreesOfFreedom, at === 0 ? FINE : COARSE);
  const outside = Math.abs(xN) - (spread.rectanglesN[0] ?? 0) - (spread.rectanglesN[1] ?? 0);
  const last = at === spread.ts.length - 1;
  let sum = 0;
  for (let i = 0; i < weights.length; i += 1) {
    const wider = variance + t.scaleN * t.scaleN * stretches[i]!;
    // Nine sigma outside every rectangle nothing is left: most steps of most checks end here.
    if (last && outside > 0 && outside * outside > FAR * FAR * wider) sum += xN > 0 ? weights[i]! : 0;
    else sum += weights[i]! * average(spread, xN, at + 1, wider);
  }
  return sum;
}

type Steps = { readonly weights: Float64Array; readonly stretches: Float64Array };

type Grid = {
  readonly widest: number;
  readonly relative: number;
  readonly least: number;
  readonly kept: Map<number, Steps>;
};

/** The second t matters less by the choice of `spreadOf`: its steps may leave an error of 1e-4. */
const FINE: Grid = { widest: 0.55, relative: 0.95, least: 1e-7, kept: new Map() };
const COARSE: Grid = { widest: 0.8, relative: 1.4, least: 1e-5, kept: new Map() };

/**
 * Equal steps over ln chi-square about its most likely value: the weight of each (they sum to 1) and by how much it
 * stretches the variance of t's scale. Kept for whole degrees of freedom, since a works has few of them and many checks.
 */
function chiSquareSteps(nu: number, { widest, relative, least, kept }: Grid): Steps {
  const known = kept.get(nu);
  if (known !== undefined) return known;
  const step = Math.min(widest, relative / Math.sqrt(nu / 2));
  const weightAt = (j: number) => Math.exp(0.5 * nu * (j * step - Math.expm1(j * step)));
  let [first, last] = [0, 0];
  while (weightAt(first - 1) > least) first -= 1;
  while (weightAt(last + 1) > least) last += 1;
  const places = Array.from({ length: last - first + 1 }, (_, i) => first + i);
  const total = places.reduce((sum, j) => sum + weightAt(j), 0);
  const steps = {
    weights: Float64Array.from(places, (j) => weightAt(j) / total),
    stretches: Float64Array.from(places, (j) => Math.exp(-j * step)),
  };
  if (Number.isInteger(nu) && nu <= 1000) kept.set(nu, steps);
  return steps;
}

const INVERSE_ROOT_TWO_PI = 1 / Math.sqrt(2 * Math.PI);
const clip = (p: number) => Math.min(1, Math.max(0, p));

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

/** So many sigma out the integrals below are nothing, or their polynomial alone; most calls end there. */
const FAR = 9;

/** Integral of the bell's distribution function, with its fourth derivative's share. */
function once(x: number, sigma: number, skew: number): number {
  const z = x / sigma;
  if (Math.abs(z) > FAR) return Math.max(0, x);
  const shape = expMinusHalfSquare(z);
  const height = INVERSE_ROOT_TWO_PI * shape;
  return sigma * (z * below(z, shape) + height) + (skew * (z * z - 1) * height) / sigma ** 3;
}

/** Its second integral. */
function twice(x: number, sigma: number, skew: number): number {
  const z = x / sigma;
  if (Math.abs(z) > FAR) return z < 0 ? 0 : 0.5 * (x * x + sigma * sigma);
  const shape = expMinusHalfSquare(z);
  const height = INVERSE_ROOT_TWO_PI * shape;
  return 0.5 * sigma * sigma * ((z * z + 1) * below(z, shape) + z * height) - (skew * z * height) / (sigma * sigma);
}

/** `normalCdf` with the exponential at hand. */
function below(z: number, shape: number): number {
  const tail = 0.5 * shape * scaledErfc(Math.abs(z) * Math.SQRT1_2);
  return z > 0 ? 1 - tail : tail;
}

/** Limit of the above without any bell: b is the narrower, 0 where there is none. */
function bareRectangles(x: number, a: number, b: number): number {
  if (a === 0) return x < 0 ? 0 : x > 0 ? 1 : 0.5;
  if (b === 0) return clip((x + a) / (2 * a));
  const half = (v: number) => 0.5 * Math.max(0, v) ** 2;
  return (half(x + a + b) - half(x + a - b) - half(x - a + b) + half(x - a - b)) / (4 * a * b);
}
