import { gaussLegendre } from "./gaussLegendre.ts";
import { normalCdf } from "./normalCdf.ts";

/**
 * Probability that Student's t shifted by `delta` is at most `t`: what a normal value moved by delta, over its
 * estimated standard deviation, does. Integrated over the distribution of that estimate.
 * @param t  finite
 * @param degreesOfFreedom  1 and more
 * @param delta  shift of the numerator in standard deviations, finite
 * @returns  0 to 1; absolute error below 1e-10
 * @throws RangeError  degrees of freedom below 1
 * @see N. L. Johnson and B. L. Welch, Biometrika 31 (1940) 362
 */
export function noncentralStudentCdf(t: number, degreesOfFreedom: number, delta: number): number {
  if (!(degreesOfFreedom >= 1)) {
    throw new RangeError(`noncentralStudentCdf requires degrees of freedom of 1 and more, got ${degreesOfFreedom}`);
  }
  const root = Math.sqrt(degreesOfFreedom);
  const from = Math.max(0, root - REACH);
  const panel = (root + REACH - from) / PANELS;
  let sum = 0;
  let whole = 0; // the density is taken without its factor, so its own integral divides
  for (let k = 0; k < PANELS; k += 1) {
    const { nodes, weights } = gaussLegendre(20, from + k * panel, from + (k + 1) * panel);
    for (const [i, u] of nodes.entries()) {
      const density = weights[i]! * Math.exp((degreesOfFreedom - 1) * Math.log(u / root) - (u * u - root * root) / 2);
      sum += density * normalCdf((t * u) / root - delta);
      whole += density;
    }
  }
  return sum / whole;
}

/** The square root of chi square strays hardly farther from that of its degrees of freedom. */
const REACH = 9;
const PANELS = 12;
