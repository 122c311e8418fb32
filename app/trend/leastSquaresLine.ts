import { mean } from "../numerics/mean.ts";

export type LeastSquaresLine = {
  readonly n: number;
  readonly slope: number;
  readonly intercept: number;
  readonly meanX: number;
  readonly meanY: number;
  /** Sum of squared distances of x from its mean. */
  readonly sxx: number;
  /** Residual standard deviation, n - 2 in the divisor; 0 with two points. */
  readonly s: number;
  readonly degreesOfFreedom: number;
};

/**
 * Least-squares line: the yardstick of intervals whose coverage is known. The line that is shown is the robust one.
 * Everything is taken about the means, so milliseconds since 1970 serve as well as days.
 * @param x  each finite, not all equal
 * @param y  as many as `x`, each finite; two or more
 * @returns  undefined where all x are equal
 * @throws RangeError  fewer than two points, or a value that is not finite
 * @see EPA 530/R-09-007 17.3.1; NIST StRD linear regression
 */
export function leastSquaresLine(x: ArrayLike<number>, y: ArrayLike<number>): LeastSquaresLine | undefined {
  const n = x.length;
  if (n < 2 || y.length !== n) throw new RangeError(`leastSquaresLine requires two points and more, got ${n}`);
  const meanX = mean(x);
  const meanY = mean(y);
  let sxx = 0;
  let sxy = 0;
  for (let i = 0; i < n; i += 1) {
    const dx = x[i]! - meanX;
    sxx += dx * dx;
    sxy += dx * (y[i]! - meanY);
  }
  if (!(sxx > 0)) return undefined;
  const slope = sxy / sxx;
  let squares = 0;
  for (let i = 0; i < n; i += 1) squares += (y[i]! - meanY - slope * (x[i]! - meanX)) ** 2;
  const s = n > 2 ? Math.sqrt(squares / (n - 2)) : 0;
  return { n, slope, intercept: meanY - slope * meanX, meanX, meanY, sxx, s, degreesOfFreedom: n - 2 };
}
