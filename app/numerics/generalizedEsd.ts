import { mean } from "./mean.ts";
import { sampleStdDev } from "./sampleStdDev.ts";
import { studentQuantile } from "./studentQuantile.ts";

export type EsdStep = {
  /** Position in the input, from 0, of the reading farthest from the mean of those still in. */
  readonly index: number;
  /** Its distance in standard deviations, R. */
  readonly statistic: number;
  /** What normal readings exceed once in 1 / alpha series, lambda. */
  readonly critical: number;
};

/**
 * Generalized extreme studentized deviate test: which readings of a nearly normal series do not belong to it.
 * The farthest reading is taken out again and again; the last step whose statistic exceeds its critical value counts,
 * not the first failure, since several outliers hide one another.
 * @param values  in one unit, each finite; at least `maxOutliers + 2`
 * @param maxOutliers  most that may be found, 1 or more
 * @param alpha  probability of naming any in a clean series; default 0.05
 * @returns  all steps, and the positions of the outliers in the order they were taken out
 * @throws RangeError  too few values for that many outliers, or one that is not finite
 * @see B. Rosner, Percentage points for a generalized ESD many-outlier procedure, Technometrics 25 (1983) 165; NIST/SEMATECH e-Handbook 1.3.5.17.3
 */
export function generalizedEsd(
  values: readonly number[],
  maxOutliers: number,
  alpha = 0.05,
): { steps: EsdStep[]; outliers: number[] } {
  const n = values.length;
  if (!(maxOutliers >= 1) || n < maxOutliers + 2) {
    throw new RangeError(`generalizedEsd requires at least ${maxOutliers + 2} values, got ${n}`);
  }
  const left = values.map((value, index) => ({ value, index }));
  const steps: EsdStep[] = [];
  for (let i = 1; i <= maxOutliers; i += 1) {
    const step = farthest(left, critical(n, i, alpha));
    steps.push(step);
    left.splice(
      left.findIndex((v) => v.index === step.index),
      1,
    );
  }
  const last = steps.findLastIndex((s) => s.statistic > s.critical);
  return { steps, outliers: steps.slice(0, last + 1).map((s) => s.index) };
}

function farthest(left: readonly { value: number; index: number }[], criticalValue: number): EsdStep {
  const values = left.map((v) => v.value);
  const middle = mean(values);
  const s = sampleStdDev(values);
  let found = left[0]!;
  for (const v of left) if (Math.abs(v.value - middle) > Math.abs(found.value - middle)) found = v;
  // Readings that are all equal have no farthest one; 0 is below every critical value.
  return { index: found.index, statistic: s > 0 ? Math.abs(found.value - middle) / s : 0, critical: criticalValue };
}

function critical(n: number, i: number, alpha: number): number {
  const t = -studentQuantile(alpha / (2 * (n - i + 1)), n - i - 1);
  return ((n - i) * t) / Math.sqrt((n - i - 1 + t * t) * (n - i + 1));
}
