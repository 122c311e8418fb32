import { mean } from "./mean.ts";

/**
 * Sample autocorrelations: how far a reading tells the ones after it.
 * @param values  equally spaced readings in one unit, each finite; two or more, not all equal
 * @param lags  how many lags, from 1; below the number of readings
 * @returns  r[0] belongs to lag 1
 * @throws RangeError  fewer than two readings, one that is not finite, no spread, or too many lags
 * @see NIST/SEMATECH e-Handbook 1.3.5.12
 */
export function autocorrelation(values: ArrayLike<number>, lags: number): number[] {
  const n = values.length;
  if (n < 2) throw new RangeError(`autocorrelation requires at least two readings, got ${n}`);
  if (!(lags >= 1 && lags < n)) throw new RangeError(`autocorrelation requires 1 to ${n - 1} lags, got ${lags}`);
  const middle = mean(values);
  let squares = 0;
  for (let i = 0; i < n; i += 1) squares += (values[i]! - middle) ** 2;
  if (!(squares > 0)) throw new RangeError("autocorrelation requires readings that differ");
  return Array.from({ length: lags }, (_, k) => {
    let sum = 0;
    for (let i = k + 1; i < n; i += 1) sum += (values[i]! - middle) * (values[i - k - 1]! - middle);
    return sum / squares;
  });
}
