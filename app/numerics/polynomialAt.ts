import type { PolynomialFit } from "./fitPolynomial.ts";

export type PolynomialPoint = {
  readonly value: number;
  /** Derivative by x. */
  readonly slope: number;
  /** Variance of `value` from the readings alone, over the residual variance (the leverage of a reading at x). */
  readonly leverage: number;
};

/**
 * The fitted curve at a load: value, slope and how well the readings pin it down there. Computed in the
 * orthogonal basis, where nothing cancels.
 * @param x  a load, finite; outside the fitted range the answer is extrapolated and its leverage grows fast
 * @throws RangeError  x is not finite
 */
export function polynomialAt(fit: PolynomialFit, x: number): PolynomialPoint {
  if (!Number.isFinite(x)) throw new RangeError("polynomialAt requires a finite load");
  const { centre, halfWidth, constant, alpha, beta, squaredNorms } = fit.basis;
  const u = (x - centre) / halfWidth;
  let before = 0;
  let slopeBefore = 0;
  let p = constant ? 1 : x / halfWidth;
  let q = constant ? 0 : 1 / halfWidth; // dp/dx
  let value = 0;
  let slope = 0;
  let leverage = 0;
  for (let k = 0; k < fit.weights.length; k += 1) {
    value += fit.weights[k]! * p;
    slope += fit.weights[k]! * q;
    leverage += (p * p) / squaredNorms[k]!;
    const next = (u - alpha[k]!) * p - beta[k]! * before;
    const nextSlope = p / halfWidth + (u - alpha[k]!) * q - beta[k]! * slopeBefore;
    before = p;
    slopeBefore = q;
    p = next;
    q = nextSlope;
  }
  return { value, slope, leverage };
}
