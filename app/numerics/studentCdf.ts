import { incompleteBeta } from "./incompleteBeta.ts";
import { normalCdf } from "./normalCdf.ts";

/**
 * Probability that Student's t is at most `t`. For the upper tail call it with -t.
 * @param t  any number, the infinities too
 * @param degreesOfFreedom  0.02 or more, whole or not; Infinity gives the normal distribution
 * @returns  0 to 1; relative error below 1e-13
 * @throws RangeError  t is not a number, or degrees of freedom below 0.02
 * @see JCGM 100:2008 (GUM) G.3.2; Abramowitz and Stegun 26.7.1
 */
export function studentCdf(t: number, degreesOfFreedom: number): number {
  if (Number.isNaN(t)) throw new RangeError("studentCdf requires a number t");
  if (degreesOfFreedom === Number.POSITIVE_INFINITY) return normalCdf(t);
  const above = studentTail(Math.abs(t), degreesOfFreedom);
  return t > 0 ? 1 - above : above;
}

/** Where the tail is a plain power of t to every digit, and t² has still room. */
const FAR = 1e140;

/** The probability beyond t of 0 or more. */
function studentTail(t: number, degreesOfFreedom: number): number {
  if (t > FAR) return studentTail(FAR, degreesOfFreedom) * (FAR / t) ** degreesOfFreedom;
  const whole = degreesOfFreedom + t * t;
  return 0.5 * incompleteBeta(degreesOfFreedom / whole, 0.5 * degreesOfFreedom, 0.5, (t * t) / whole);
}
