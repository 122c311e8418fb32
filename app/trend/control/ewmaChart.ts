export type EwmaOptions = {
  /** Weight of the newest value, above 0 to 1. */
  readonly lambda: number;
  readonly target: number;
  readonly sigma: number;
  /** Limits in standard deviations of the average. */
  readonly width?: number;
  /** `startup`: limits widen with each value as the average's own spread does; `steady`: its final spread from the first. */
  readonly limits?: "startup" | "steady";
};

export type EwmaChart = {
  readonly lambda: number;
  readonly center: number;
  /** Standard deviation of single values. */
  readonly sigma: number;
  readonly values: Float64Array;
  readonly upper: Float64Array;
  readonly lower: Float64Array;
  /** Values beyond their limits, counted from 1. */
  readonly signals: readonly number[];
};

/**
 * Exponentially weighted moving average: small lasting shifts show, single wild values fade. It starts at the target.
 * @param values  in the order they came, each finite
 * @throws RangeError  lambda out of range, or sigma below 0
 * @see NIST/SEMATECH e-Handbook 6.3.2.4 (steady limits); D. C. Montgomery, Introduction to Statistical Quality
 *      Control, 6th ed., 9.2 (start-up limits)
 */
export function ewmaChart(values: ArrayLike<number>, options: EwmaOptions): EwmaChart {
  const { lambda, target, sigma, width = 3, limits = "startup" } = options;
  if (!(lambda > 0 && lambda <= 1))
    throw new RangeError(`ewmaChart requires lambda above 0 and up to 1, got ${lambda}`);
  if (!(sigma >= 0)) throw new RangeError(`ewmaChart requires a sigma of 0 or more, got ${sigma}`);
  const n = values.length;
  const chart = { values: new Float64Array(n), upper: new Float64Array(n), lower: new Float64Array(n) };
  const signals: number[] = [];
  let average = target;
  let left = 1; // (1 - lambda)^(2i)
  for (let i = 0; i < n; i += 1) {
    average = lambda * values[i]! + (1 - lambda) * average;
    left *= (1 - lambda) ** 2;
    const half = width * sigma * Math.sqrt((lambda / (2 - lambda)) * (limits === "steady" ? 1 : 1 - left));
    chart.values[i] = average;
    chart.upper[i] = target + half;
    chart.lower[i] = target - half;
    if (average > target + half || average < target - half) signals.push(i + 1);
  }
  return { lambda, center: target, sigma, ...chart, signals };
}
