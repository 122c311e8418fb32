import { leastStep, scatterOfSteps, stretchMedian, stretchScale } from "./stretch.ts";

/**
 * Whether the readings in [from, to) stand at one level: their halves agree within what their own scatter explains,
 * and they lie no farther about their middle than their neighbours differ. Allows for noise correlated to 0.7.
 * @param stepN  resolution, 0 when unknown
 * @returns  the level, or undefined
 */
export function quietLevel(values: Float64Array, from: number, to: number, stepN: number): number | undefined {
  const known = stepN > 0 ? stepN : leastStep(values, from, to);
  const scale = stretchScale(values, from, to, known);
  if (scale === undefined || scale.n < Math.min(6, (to - from) / 2)) return undefined;
  const half = (from + to) >> 1;
  const drift = Math.abs(stretchMedian(values, from, half) - stretchMedian(values, half, to));
  const step = stepN > 0 ? stepN : Math.min(known, 2 * scale.sigma);
  const sigma = Math.max(scatterOfSteps(values, from, to), 0.3 * step);
  const allowed = Math.max(7.5 * sigma * Math.sqrt(4 / Math.min(scale.n, to - from)), 1.01 * step);
  return drift <= allowed && scale.sigma <= 3.5 * sigma + 0.5 * step ? scale.middle : undefined;
}
