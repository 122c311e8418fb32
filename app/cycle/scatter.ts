import { correlationTime } from "../numerics/correlationTime.ts";
import { studentQuantile } from "../numerics/studentQuantile.ts";

/** Readings of one level with what trend they had taken off. */
export type Residuals = { readonly values: Float64Array; readonly parameters: number };

/** Straight line of y on x through their means; slope 0 where x does not vary. */
export function lineFit(x: Float64Array, y: Float64Array): { slope: number; meanX: number; meanY: number } {
  const n = y.length;
  let meanX = 0;
  let meanY = 0;
  for (let i = 0; i < n; i += 1) {
    meanX += x[i]! / n;
    meanY += y[i]! / n;
  }
  let xx = 0;
  let xy = 0;
  for (let i = 0; i < n; i += 1) {
    xx += (x[i]! - meanX) ** 2;
    xy += (x[i]! - meanX) * (y[i]! - meanY);
  }
  return { slope: xx > 0 ? xy / xx : 0, meanX, meanY };
}

export function residualsOf(x: Float64Array, y: Float64Array, trend: boolean): Residuals {
  const fit = lineFit(x, y);
  const slope = trend ? fit.slope : 0;
  return { values: y.map((v, i) => v - fit.meanY - slope * (x[i]! - fit.meanX)), parameters: trend ? 2 : 1 };
}

export type Scatter = {
  /** Standard deviation of the noise. */
  readonly sigmaN: number;
  /** How many readings count as one, for a mean and for a median. */
  readonly memory: number;
  readonly medianMemory: number;
  /** Widens a standard uncertainty so that 1.96 of it hold 95 % although the noise is known from few readings. */
  readonly widening: number;
  readonly effectiveN: number;
};

/**
 * Noise of a stretch, and how far its readings are independent. What other stretches of the same stream show of the
 * noise's memory helps where this one is short.
 */
export function scatterOf(residuals: Residuals, others: readonly Float64Array[]): Scatter {
  const { values, parameters } = residuals;
  const all = [values, ...others.map((o) => rescaled(o, values))];
  const memory = correlationTime(all, "mean");
  let squares = 0;
  for (let i = 0; i < values.length; i += 1) squares += values[i]! ** 2;
  const effectiveN = Math.max(1, values.length / memory);
  // Correlated noise moves the mean (and the trend) along with it: what is left is too small by that share.
  const freedom = Math.max(1, effectiveN - parameters);
  const sigmaN = Math.sqrt(squares / values.length / Math.max(0.2, 1 - parameters / effectiveN));
  return {
    sigmaN,
    memory,
    medianMemory: correlationTime(all, "median"),
    widening: freedom > 300 ? 1 : studentQuantile(0.975, freedom) / 1.959963984540054,
    effectiveN,
  };
}

/** Brings another stretch's residuals to this one's size: only its correlations are wanted. */
function rescaled(other: Float64Array, like: Float64Array): Float64Array {
  const size = rms(other);
  const factor = size > 0 ? rms(like) / size : 0;
  return other.map((v) => v * factor);
}

function rms(values: Float64Array): number {
  let squares = 0;
  for (let i = 0; i < values.length; i += 1) squares += values[i]! ** 2;
  return values.length === 0 ? 0 : Math.sqrt(squares / values.length);
}

/**
 * What rounding to steps can hide of a level, as a variance: a rectangle of one step where the noise is far below a
 * step, next to nothing where it is half a step and more and dithers the rounding away.
 * @see B. Widrow and I. Kollar, Quantization Noise (2008), ch. 4: the bias of rounding falls as exp(-2 pi^2 s^2)
 */
export function roundingVariance(sigmaN: number, stepN: number): number {
  if (!(stepN > 0)) return 0;
  const own = Math.max(0, sigmaN * sigmaN - (stepN * stepN) / 12); // the rounding's own scatter taken out
  return ((stepN * stepN) / 12) * Math.exp((-4 * Math.PI * Math.PI * own) / (stepN * stepN));
}
