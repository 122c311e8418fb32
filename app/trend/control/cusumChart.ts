export type CusumOptions = {
  /** Allowance and decision value, in units of sigma. */
  readonly k: number;
  readonly h: number;
  readonly target: number;
  readonly sigma: number;
};

export type CusumChart = CusumOptions & {
  /** Sums of what values lie beyond target ± k sigma, in units of sigma, 0 or more. */
  readonly high: Float64Array;
  readonly low: Float64Array;
  /** Values at which either sum exceeds h, counted from 1; the sums go on after a signal. */
  readonly signals: readonly number[];
};

/**
 * Tabular two-sided CUSUM: what piles up on one side of the target.
 * @param values  in the order they came, each finite
 * @throws RangeError  sigma not above 0, k below 0, or h not above 0
 * @see NIST/SEMATECH e-Handbook 6.3.2.3
 */
export function cusumChart(values: ArrayLike<number>, options: CusumOptions): CusumChart {
  const { k, h, target, sigma } = options;
  if (!(sigma > 0)) throw new RangeError(`cusumChart requires a sigma above 0, got ${sigma}`);
  if (!(k >= 0 && h > 0)) throw new RangeError(`cusumChart requires k of 0 or more and h above 0, got ${k} and ${h}`);
  const n = values.length;
  const high = new Float64Array(n);
  const low = new Float64Array(n);
  const signals: number[] = [];
  let up = 0;
  let down = 0;
  for (let i = 0; i < n; i += 1) {
    const z = (values[i]! - target) / sigma;
    up = Math.max(0, up + z - k);
    down = Math.max(0, down - z - k);
    high[i] = up;
    low[i] = down;
    if (up > h || down > h) signals.push(i + 1);
  }
  return { k, h, target, sigma, high, low, signals };
}
