import { mean } from "../../numerics/mean.ts";

export type StepScan = {
  readonly n: number;
  /** How many places were tried. */
  readonly places: number;
  /** Sums of squares left by a constant, and by a line. */
  readonly level: number;
  readonly line: number;
  /** What the best step leaves: two constants, and one line with a step in it; `at` is the first value after. */
  readonly step: { readonly rest: number; readonly at: number };
  readonly stepOnLine: { readonly rest: number; readonly at: number };
};

/**
 * Sums of squares of the four simple pictures of a stretch: constant, line, step, line with a step. Running sums give
 * what each place gains, so one pass tries them all.
 * @param x  ascending; all equal: a line is no better than a constant
 * @param y  as many as `x`
 * @param side  least number of values on either side
 */
export function scanSteps(x: Float64Array, y: Float64Array, side: number): StepScan {
  const n = x.length;
  const meanX = mean(x);
  const meanY = mean(y);
  let sxx = 0;
  let sxy = 0;
  let level = 0;
  for (let i = 0; i < n; i += 1) {
    const dx = x[i]! - meanX;
    const dy = y[i]! - meanY;
    sxx += dx * dx;
    sxy += dx * dy;
    level += dy * dy;
  }
  const slope = sxx > 0 ? sxy / sxx : 0;
  const line = Math.max(0, level - slope * sxy);
  const step = { gain: -1, at: 0 };
  const onLine = { gain: -1, at: 0 };
  let sumX = 0;
  let sumY = 0;
  for (let k = 1; k <= n - side; k += 1) {
    const dx = x[k - 1]! - meanX;
    sumX += dx;
    sumY += y[k - 1]! - meanY;
    if (k < side) continue;
    const weight = (k * (n - k)) / n;
    keep(step, (sumY * sumY) / weight, k);
    // The step's own part that the line cannot take over: its distance from the line through x.
    const own = sxx > 0 ? weight - (sumX * sumX) / sxx : weight;
    const rest = sumY - slope * sumX;
    if (own > 1e-9 * weight) keep(onLine, (rest * rest) / own, k);
  }
  return {
    n,
    places: n - 2 * side + 1,
    level,
    line,
    step: { rest: Math.max(0, level - step.gain), at: step.at },
    stepOnLine: { rest: Math.max(0, line - onLine.gain), at: onLine.at },
  };
}

function keep(best: { gain: number; at: number }, gain: number, at: number): void {
  if (!(gain > best.gain)) return;
  best.gain = gain;
  best.at = at;
}
