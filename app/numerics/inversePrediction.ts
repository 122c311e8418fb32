import { findRoot } from "./findRoot.ts";
import type { PolynomialFit } from "./fitPolynomial.ts";
import { polynomialAt } from "./polynomialAt.ts";
import { studentQuantile } from "./studentQuantile.ts";

export type InverseOptions = {
  /** Probability of the two-sided interval, above 0 and below 1. */
  readonly level: number;
  /** True: `y0` is a value of the curve itself, without the scatter of single readings. */
  readonly meanResponse: boolean;
  /** Loads the answer is looked for in; the curve must not turn back between them. */
  readonly from: number;
  readonly to: number;
};

export type InversePrediction = {
  readonly estimate: number;
  /** Ends of the interval by inversion of the prediction band; undefined where the band never leaves y0 inside the range. */
  readonly lower: number | undefined;
  readonly upper: number | undefined;
  /** Standard uncertainty by the curve's slope, and the symmetric interval from it. */
  readonly standard: number;
  readonly waldLower: number;
  readonly waldUpper: number;
  readonly degreesOfFreedom: number;
};

/**
 * The load that gave an indication, read back from a calibration curve, with its interval.
 * Several readings of the same load are averaged and their scatter joins the residual variance.
 * @param y0  one or more indications of the unknown load
 * @returns  undefined when the curve does not reach the mean of `y0` between `from` and `to`
 * @throws RangeError  no reading, a figure that is not finite, or a level outside 0 to 1
 * @see Draper and Smith, Applied Regression Analysis, 3.2 (inverse regression); E. C. Fieller, JRSS B 16 (1954) 175
 */
export function inversePrediction(
  fit: PolynomialFit,
  y0: readonly number[],
  options: InverseOptions,
): InversePrediction | undefined {
  const m = y0.length;
  if (m === 0 || !y0.every(Number.isFinite))
    throw new RangeError("inversePrediction requires at least one finite reading");
  const { level, meanResponse, from, to } = options;
  if (!(level > 0 && level < 1))
    throw new RangeError(`inversePrediction requires a level between 0 and 1, got ${level}`);
  const mean = y0.reduce((sum, v) => sum + v, 0) / m;
  const off = (x: number) => polynomialAt(fit, x).value - mean;
  if (!straddles(off(from), off(to))) return undefined;
  const estimate = findRoot(off, from, to);
  const degreesOfFreedom = fit.residualDf + m - 1;
  const scatter = y0.reduce((sum, v) => sum + (v - mean) ** 2, 0);
  const s = Math.sqrt((fit.residualSumOfSquares + scatter) / degreesOfFreedom);
  const t = studentQuantile(0.5 + level / 2, degreesOfFreedom);
  const own = meanResponse ? 0 : 1 / m;
  const at = polynomialAt(fit, estimate);
  const standard = (s * Math.sqrt(own + at.leverage)) / Math.abs(at.slope);
  const rising = off(to) > off(from);
  const band = (sign: number) => (x: number) => {
    const p = polynomialAt(fit, x);
    return p.value - mean + sign * t * s * Math.sqrt(own + p.leverage);
  };
  const edge = (sign: number, end: number) => {
    const f = band(sign);
    return straddles(f(estimate), f(end)) ? findRoot(f, estimate, end) : undefined;
  };
  return {
    estimate,
    lower: edge(rising ? 1 : -1, from),
    upper: edge(rising ? -1 : 1, to),
    standard,
    waldLower: estimate - t * standard,
    waldUpper: estimate + t * standard,
    degreesOfFreedom,
  };
}

const straddles = (a: number, b: number) => a === 0 || b === 0 || a > 0 !== b > 0;
