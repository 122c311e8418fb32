import { correlationTime } from "../../numerics/correlationTime.ts";
import { studentQuantile } from "../../numerics/studentQuantile.ts";

/** Readings of one level with their mean, or the trend they follow, taken off. */
export type Residuals = { readonly values: Float64Array; readonly parameters: number };

export type Line = { readonly slope: number; readonly meanX: number; readonly meanY: number };

/** Straight line of y on x through their means; slope 0 where x does not vary. */
export function lineFit(x: Float64Array, y: Float64Array): Line {
  const n = y.length;
  let sumX = 0;
  let sumY = 0;
  for (let i = 0; i < n; i += 1) {
    sumX += x[i]!;
    sumY += y[i]!;
  }
  const meanX = sumX / n;
  const meanY = sumY / n;
  let xx = 0;
  let xy = 0;
  for (let i = 0; i < n; i += 1) {
    const d = x[i]! - meanX;
    xx += d * d;
    xy += d * (y[i]! - meanY);
  }
  return { slope: xx > 0 ? xy / xx : 0, meanX, meanY };
}

export function residualsOf(x: Float64Array, y: Float64Array, line: Line, trend: boolean): Residuals {
  const slope = trend ? line.slope : 0;
  const values = new Float64Array(y.length);
  for (let i = 0; i < y.length; i += 1) values[i] = y[i]! - line.meanY - slope * (x[i]! - line.meanX);
  return { values, parameters: trend ? 2 : 1 };
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

/** Residuals looked at for the memory of the noise; more tell no more, and each lag reads them all. */
const enoughForMemory = 2048;

/**
 * Noise of a stretch, and how far its readings are independent. What another stretch of the same stream shows of the
 * noise's memory helps where this one is short.
 */
export function scatterOf(residuals: Residuals, other: Float64Array): Scatter {
  const { values, parameters } = residuals;
  const squares = squaresOf(values);
  const shown = values.subarray(0, enoughForMemory);
  const memory = correlationTime(other.length > 0 ? [shown, rescaled(other, squares / values.length)] : [shown]);
  const effectiveN = Math.max(1, values.length / memory.ofMean);
  // Correlated noise moves the mean (and the trend) along with it: what is left is too small by that share.
  const freedom = Math.max(1, effectiveN - parameters);
  const sigmaN = Math.sqrt(squares / values.length / Math.max(0.2, 1 - parameters / effectiveN));
  return {
    sigmaN,
    memory: memory.ofMean,
    medianMemory: memory.ofMedian,
    widening: freedom > 300 ? 1 : studentQuantile(0.975, freedom) / 1.959963984540054,
    effectiveN,
  };
}

/** Brings another stretch's residuals to this mean square: only their correlations are wanted. */
function rescaled(other: Float64Array, meanSquare: number): Float64Array {
  const own = squaresOf(other) / other.length;
  const factor = own > 0 ? Math.sqrt(meanSquare / own) : 0;
  const values = new Float64Array(other.length);
  for (let i = 0; i < other.length; i += 1) values[i] = factor * other[i]!;
  return values;
}

function squaresOf(values: Float64Array): number {
  let squares = 0;
  for (let i = 0; i < values.length; i += 1) squares += values[i]! * values[i]!;
  return squares;
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
