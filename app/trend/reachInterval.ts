import type { LeastSquaresLine } from "./leastSquaresLine.ts";

/** What widens a line beyond its own residuals. */
export type ReachOptions = {
  /** Student's t for the line's own degrees of freedom. */
  readonly t: number;
  /** Half-width in y that all points share (a gauge's own error moves the whole line); 0: none. */
  readonly sharedHalf?: number;
  /** Factor on the residual variance for points that remember one another; 1: independent. */
  readonly memory?: number;
};

/**
 * Where the true line reaches y0: Fieller's interval by inversion of the line's confidence band.
 * The slope has to differ from 0 at the same confidence; else no finite interval exists.
 * @returns  undefined where it does not
 * @see E. C. Fieller, JRSS B 16 (1954) 175; N. R. Draper and H. Smith, Applied Regression Analysis, 3.2
 */
export function reachInterval(
  line: LeastSquaresLine,
  y0: number,
  { t, sharedHalf = 0, memory = 1 }: ReachOptions,
): { readonly low: number; readonly high: number } | undefined {
  const scatter = t * t * line.s * line.s * memory;
  const steep = line.slope * line.slope - scatter / line.sxx;
  if (!(steep > 0)) return undefined;
  const away = y0 - line.meanY;
  const half = Math.sqrt((scatter / line.n + sharedHalf * sharedHalf) * steep + (scatter * away * away) / line.sxx);
  const middle = line.meanX + (line.slope * away) / steep;
  return { low: middle - half / steep, high: middle + half / steep };
}

/** Half-width of the line's confidence band at x, under the same options. */
export function bandHalf(line: LeastSquaresLine, x: number, { t, sharedHalf = 0, memory = 1 }: ReachOptions): number {
  const off = x - line.meanX;
  return Math.sqrt(t * t * line.s * line.s * memory * (1 / line.n + (off * off) / line.sxx) + sharedHalf * sharedHalf);
}
