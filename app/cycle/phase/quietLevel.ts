import { leastStep, scatterOfSteps, stretchMedian, stretchScale } from "../read/stretch.ts";

/**
 * Whether the readings in [from, to) stand at one level: their halves agree within what their own scatter explains,
 * and they lie no farther about their middle than their neighbours differ. Allows for noise correlated to 0.7.
 * @param stepN  resolution, 0 when unknown
 * @param knownSigmaN  scatter of an earlier rest, 0 when there was none
 * @returns  the level, or undefined
 */
export function quietLevel(
  values: Float64Array,
  from: number,
  to: number,
  stepN: number,
  knownSigmaN: number,
): number | undefined {
  const half = (from + to) >> 1;
  const drift = Math.abs(stretchMedian(values, from, half) - stretchMedian(values, half, to));
  const known = stepN > 0 ? stepN : leastStep(values, from, to);
  const spread = (sigma: number, n: number) => 7.5 * sigma * Math.sqrt(4 / n);
  // Most stretches that move are seen to by this alone.
  const most = spread(Math.max(2 * knownSigmaN, 0.3 * known), Math.min(64, (to - from) / 2)) + 1.01 * known;
  if (knownSigmaN > 0 && drift > most) return undefined;
  // A rise among few readings looks like noise; noise seen before tells it apart.
  const shown = scatterOfSteps(values, from, to);
  const likely = knownSigmaN > 0 ? Math.min(shown, 2 * knownSigmaN) : shown;
  if (drift > spread(Math.max(likely, 0.3 * known), Math.min(64, (to - from) / 2)) + 1.01 * known) return undefined;
  const scale = stretchScale(values, from, to, known);
  if (scale === undefined || scale.n < Math.min(6, (to - from) / 2)) return undefined;
  const step = stepN > 0 ? stepN : Math.min(known, 2 * scale.sigma);
  const sigma = Math.max(likely, 0.3 * step);
  const allowed = Math.max(spread(sigma, Math.min(scale.n, to - from)), 1.01 * step);
  if (drift > allowed || scale.sigma > 3.5 * sigma + 0.5 * step) return undefined;
  // Medians do not see the first readings of the next rise.
  const reach = 6 * Math.max(scale.sigma, sigma) + 1.6 * step;
  for (let i = Math.max(from, to - 2); i < to; i += 1)
    if (Math.abs(values[i]! - scale.middle) > reach) return undefined;
  return scale.middle;
}
