/**
 * The value below which a fraction p of the readings lies, interpolated between neighbours in order: position
 * (n - 1) p counted from 0 (definition 7 of the paper below, the one most spreadsheets use).
 * @param values  in one unit, each finite; one or more
 * @param p  0 to 1
 * @returns  the quantile, in the unit of `values`
 * @throws RangeError  no value, one that is not finite, or p outside 0 to 1
 * @see R. J. Hyndman and Y. Fan, Sample quantiles in statistical packages, The American Statistician 50 (1996) 361
 */
export function quantile(values: ArrayLike<number>, p: number): number {
  if (values.length < 1) throw new RangeError("quantile requires at least one value, got 0");
  if (!(p >= 0 && p <= 1)) throw new RangeError(`quantile requires p from 0 to 1, got ${p}`);
  const sorted = Float64Array.from(values).sort();
  const last = sorted.length - 1;
  if (!Number.isFinite(sorted[0]! + sorted[last]!)) throw new RangeError("quantile requires finite values");
  const position = last * p;
  const below = Math.floor(position);
  const low = sorted[below]!;
  return low + (position - below) * (sorted[Math.min(below + 1, last)]! - low);
}
