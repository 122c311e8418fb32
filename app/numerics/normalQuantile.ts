import { erf } from "./erf.ts";
import { scaledErfc } from "./scaledErfc.ts";

/**
 * The z below which a standard normal variable lies with probability p. For an upper tail q use -normalQuantile(q):
 * 1 - q would have lost the digits already.
 * A rough start is sharpened by third-order steps: in the middle on erf, so that z near 0 keeps its relative accuracy,
 * in the tail on the logarithm, so that nothing underflows.
 * @param p  probability, above 0 and below 1
 * @returns  z; relative error below 1e-14
 * @throws RangeError  p outside the open interval
 * @see Abramowitz and Stegun 26.2.23 for the start
 */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`normalQuantile requires a probability between 0 and 1, got ${p}`);
  if (p > 0.25 && p < 0.75) return middle(p - 0.5);
  return p < 0.5 ? -tail(p) : tail(1 - p);
}

const ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

function middle(fromHalf: number): number {
  let z = fromHalf * ROOT_TWO_PI;
  for (let step = 0; step < 4; step += 1) {
    const miss = (0.5 * erf(z * Math.SQRT1_2) - fromHalf) * ROOT_TWO_PI * Math.exp(0.5 * z * z);
    z -= miss / (1 + 0.5 * z * miss); // Halley: the bell's slope is -z times its height
  }
  return z;
}

/** z > 0 with q above it. */
function tail(q: number): number {
  const logQ = Math.log(q);
  const s = Math.sqrt(-2 * logQ);
  let z = s - (2.515517 + s * (0.802853 + s * 0.010328)) / (1 + s * (1.432788 + s * (0.189269 + s * 0.001308)));
  for (let step = 0; step < 3; step += 1) {
    const mills = 0.5 * scaledErfc(z * Math.SQRT1_2) * ROOT_TWO_PI; // tail over height of the bell
    const miss = Math.log(mills / ROOT_TWO_PI) - 0.5 * z * z - logQ;
    const slope = -1 / mills;
    z -= miss / (slope + 0.5 * miss * (z + slope)); // Halley: the slope's own slope is -slope·(z + slope)
  }
  return z;
}
