/**
 * Round values for an axis: steps of 1, 2, 2.5 or 5 times a power of ten, so many that about `wanted` of them lie in the span.
 * @returns  the values from `low` to `high`, and the decimals they need
 */
export function niceTicks(
  low: number,
  high: number,
  wanted: number,
): { readonly values: number[]; readonly decimals: number } {
  if (!(high > low) || !(wanted >= 1)) return { values: [], decimals: 0 };
  const rough = (high - low) / wanted;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 2.5, 5, 10].map((m) => m * power).find((s) => s >= rough * 0.999) ?? 10 * power;
  const values: number[] = [];
  for (let i = Math.ceil(low / step - 1e-9); i * step <= high + step * 1e-9; i += 1) values.push(i * step);
  const decimals = Math.max(0, Math.min(6, Math.ceil(-Math.log10(step) - 1e-9) + (step / power === 2.5 ? 1 : 0)));
  return { values, decimals };
}
