/** Expanded uncertainty over force: U² = constant² + (proportional x force)², in the reference's unit. */
export type UncertaintyCurve = { readonly constant: number; readonly proportional: number };

/**
 * Fits an uncertainty curve to the steps of a proof and raises it until it lies below none of them: a value between
 * two steps is never stated better than its neighbours.
 * @param forces  one for each step, not below zero
 * @param expanded  one for each force, not below zero
 * @returns  zeros for no steps
 */
export function uncertaintyCurve(forces: readonly number[], expanded: readonly number[]): UncertaintyCurve {
  const x = forces.map((f) => f * f);
  const y = expanded.map((u) => u * u);
  const n = x.length;
  if (n === 0) return { constant: 0, proportional: 0 };
  const meanX = x.reduce((a, b) => a + b, 0) / n;
  const meanY = y.reduce((a, b) => a + b, 0) / n;
  const xx = x.reduce((sum, v) => sum + (v - meanX) ** 2, 0);
  const xy = x.reduce((sum, v, i) => sum + (v - meanX) * y[i]!, 0);
  // Neither part of a sum of squares may fall below zero: then the other stands alone.
  let slope = xx > 0 ? Math.max(0, xy / xx) : 0;
  let base = meanY - slope * meanX;
  if (base < 0) {
    base = 0;
    slope = x.reduce((sum, v, i) => sum + v * y[i]!, 0) / x.reduce((sum, v) => sum + v * v, 0);
  }
  const raise = x.reduce((most, v, i) => Math.max(most, base + slope * v > 0 ? y[i]! / (base + slope * v) : 1), 1);
  return { constant: Math.sqrt(base * raise), proportional: Math.sqrt(slope * raise) };
}
