import { autocorrelation } from "../numerics/autocorrelation.ts";
import { normalCdf } from "../numerics/normalCdf.ts";
import type { MannKendall } from "./mannKendall.ts";

export type SerialMemory = {
  /** Autocorrelation of neighbouring residuals about the trend, corrected for what taking out the trend hides. */
  readonly lag1: number;
  /** Whether it differs from 0 at 5 %, one-sided: only then is anything corrected. */
  readonly found: boolean;
  /** Factor on the variance of S; 1 where nothing was found. */
  readonly varianceFactor: number;
  /** Two-sided p of the trend with that variance; undefined where memory was found in fewer than 20 values: cannot tell. */
  readonly p: number | undefined;
};

/**
 * What checks that remember one another do to the test for a trend: neighbours that are alike look like a trend.
 * The variance of S is multiplied by the factor of a first-order autoregressive series (Yue and Wang), from the
 * lag-1 autocorrelation of the residuals about the robust line, its bias taken out, and only where it is found.
 * Corrected always, the test would hardly ever reject; corrected by many lags, it would reject far too often.
 * Checks are taken as evenly spaced.
 * @param residuals  about the robust line, in the order of x
 * @param test  of the same values
 * @see S. Yue and C. Wang, Water Resources Management 18 (2004) 201; bias: F. H. C. Marriott and J. A. Pope,
 *      Biometrika 41 (1954) 390
 */
export function serialMemory(residuals: ArrayLike<number>, test: MannKendall): SerialMemory {
  const n = residuals.length;
  const { lag1, found } = neighbourMemory(residuals);
  if (!found) return { lag1, found, varianceFactor: 1, p: test.p };
  const varianceFactor = yueWang(Math.min(0.9, lag1), n);
  const z = test.varS > 0 ? (Math.abs(test.s) - 1) / Math.sqrt(test.varS * varianceFactor) : 0;
  const p = n < 20 ? undefined : Math.min(1, 2 * normalCdf(-Math.max(0, z)));
  return { lag1, found, varianceFactor, p };
}

/** Lag-1 autocorrelation of residuals about a line, without the bias the line brings, and whether it is above 0 at 5 %. */
function neighbourMemory(residuals: ArrayLike<number>): { readonly lag1: number; readonly found: boolean } {
  const n = residuals.length;
  if (n < LEAST) return { lag1: 0, found: false };
  const raw = lagOne(residuals);
  return { lag1: (n * raw + 2) / (n - 4), found: raw + 2 / n > ONE_SIDED_5 / Math.sqrt(n) };
}

/** Under eight values nothing can be told of memory. */
const LEAST = 8;
const ONE_SIDED_5 = 1.6448536269514722;

function lagOne(residuals: ArrayLike<number>): number {
  let spread = false;
  for (let i = 1; i < residuals.length; i += 1) spread ||= residuals[i] !== residuals[0];
  return spread ? autocorrelation(residuals, 1)[0]! : 0;
}

function yueWang(r: number, n: number): number {
  return 1 + (2 * (r ** (n + 1) - n * r * r + (n - 1) * r)) / (n * (r - 1) ** 2);
}
