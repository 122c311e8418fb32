import { incompleteBeta } from "./incompleteBeta.ts";
import { logBetaWeight } from "./logBetaWeight.ts";
import { normalQuantile } from "./normalQuantile.ts";
import { studentCdf } from "./studentCdf.ts";

/**
 * The t below which Student's t lies with probability p: 0.975 gives the factor of a two-sided 95 % interval.
 * Newton's method on ln probability over ln t: both ends of the distribution are straight lines there, so that steps
 * from a rough start neither run away nor underflow, and t near 0 keeps its relative accuracy.
 * @param p  probability, above 0 and below 1; for a small upper tail q use -studentQuantile(q, ...)
 * @param degreesOfFreedom  0.5 or more, whole or not; Infinity gives the normal distribution
 * @returns  t; relative error below 1e-12
 * @throws RangeError  p outside the open interval, or degrees of freedom below 0.5
 * @see JCGM 100:2008 (GUM) G.3.2 and table G.2
 */
export function studentQuantile(p: number, degreesOfFreedom: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`studentQuantile requires a probability between 0 and 1, got ${p}`);
  if (!(degreesOfFreedom >= 0.5)) {
    throw new RangeError(`studentQuantile requires degrees of freedom of 0.5 and more, got ${degreesOfFreedom}`);
  }
  if (degreesOfFreedom === Number.POSITIVE_INFINITY) return normalQuantile(p);
  if (p === 0.5) return 0;
  const size = quantileAbove(p < 0.5 ? p : 1 - p, Math.abs(p - 0.5), degreesOfFreedom);
  return p < 0.5 ? -size : size;
}

/** Where the tail is a plain power of t to every digit, and t² has still room. */
const FAR = 1e140;

/** t > 0 with `tail` beyond it and `within` between 0 and it; both are given since neither follows from the other in full digits. */
function quantileAbove(tail: number, within: number, degreesOfFreedom: number): number {
  const a = 0.5 * degreesOfFreedom;
  const inTail = tail < 0.25;
  const farTail = tail < 1e-100 ? studentCdf(-FAR, degreesOfFreedom) : 0;
  if (tail < farTail) return FAR * (farTail / tail) ** (1 / degreesOfFreedom);
  const target = Math.log(2 * (inTail ? tail : within));
  let logT = Math.log(inTail ? -normalQuantile(tail) : within * 2.5);
  for (let step = 0; step < 100; step += 1) {
    const r = Math.exp(2 * logT) / degreesOfFreedom;
    const [x, y] = [1 / (1 + r), r / (1 + r)];
    const share = inTail ? incompleteBeta(x, a, 0.5, y) : incompleteBeta(y, 0.5, a, x);
    const slope = (2 * Math.exp(logBetaWeight(x, y, a, 0.5))) / share;
    const move = (Math.log(share) - target) / (inTail ? slope : -slope);
    logT = Math.min(logT + move, Math.log(FAR));
    if (Math.abs(move) < 1e-8) return Math.exp(logT); // the last step squared the error
  }
  throw new RangeError(
    `studentQuantile does not converge for a tail of ${tail} and ${degreesOfFreedom} degrees of freedom`,
  );
}
