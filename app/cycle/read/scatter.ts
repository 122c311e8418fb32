import { type CorrelationTime, correlationTime } from "../../numerics/correlationTime.ts";
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
const enoughForMemory = 1024;

/**
 * Noise of a stretch, and how far its readings are independent. What other stretches of the same stream show of the
 * noise's memory helps where this one is short; where all together are few, memory that they could hide is allowed for.
 */
export function scatterOf(residuals: Residuals, others: readonly Float64Array[]): Scatter {
  const { values, parameters } = residuals;
  const squares = squaresOf(values);
  const shown = values.subarray(0, enoughForMemory);
  const all = [shown, ...others.filter((o) => o.length > 2).map((o) => rescaled(o, squares / values.length))];
  const memory = doubted(
    correlationTime(all),
    values.length,
    all.reduce((n, s) => n + s.length, 0),
  );
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

/** From so many independent readings on the estimate is taken as it is; under half of it the doubt counts whole. */
const undoubted = 60;
const mostMemory = 0.8;

/** Few readings can hide a first-order memory of one standard error of their autocorrelation. */
function doubted(found: CorrelationTime, n: number, seen: number): { ofMean: number; ofMedian: number } {
  const doubt = Math.min(1, Math.max(0, 2 - (2 * n) / found.ofMean / undoubted));
  if (doubt === 0 || seen < 3) return found;
  const r = Math.min(mostMemory, Math.max(0, found.lag1) + doubt / Math.sqrt(seen));
  let ofMedian = 1;
  for (let power = r; power > 1e-3; power *= r) ofMedian += (4 / Math.PI) * Math.asin(power);
  return { ofMean: Math.max(found.ofMean, (1 + r) / (1 - r)), ofMedian: Math.max(found.ofMedian, ofMedian) };
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
 * What rounding to steps can hide of a mean, as a variance: a rectangle of one step where the noise is far below a
 * step, next to nothing where it is half a step and more and dithers the rounding away.
 * @param sigmaN  `noiseOverSteps` of the readings
 * @see B. Widrow and I. Kollar, Quantization Noise (2008), ch. 4: the bias of rounding falls as exp(-2 pi^2 s^2)
 */
export function roundingOfMean(sigmaN: number, stepN: number): number {
  if (!(stepN > 0)) return 0;
  return ((stepN * stepN) / 12) * Math.exp(-4 * (Math.PI * (sigmaN / stepN)) ** 2);
}

/**
 * The same of a grouped median, which takes readings as spread evenly over the middle step although they are not: its
 * mean square bias over all places of a level in a step, for normal noise, computed here by quadrature and drawn through
 * by a formula that is right to a fifth from 0.1 to 1.5 steps.
 */
export function roundingOfMedian(sigmaN: number, stepN: number): number {
  if (!(stepN > 0)) return 0;
  const steps2 = (sigmaN / stepN) ** 2;
  return (stepN * stepN) / 12 / (1.2 + 35 * steps2 + 690 * steps2 * steps2);
}

/**
 * Standard deviation of the noise before it was rounded. Readings that show no more than two neighbouring figures tell
 * nothing of it: a quiet force on the border of two steps flickers between them.
 * @param sigmaN  standard deviation of the rounded readings
 */
export function noiseOverSteps(values: Float64Array, sigmaN: number, stepN: number): number {
  if (!(stepN > 0)) return sigmaN;
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < values.length; i += 1) {
    const v = values[i]!;
    if (v < least) least = v;
    if (v > most) most = v;
  }
  return most - least < 1.5 * stepN ? 0 : Math.sqrt(Math.max(0, sigmaN * sigmaN - (stepN * stepN) / 12));
}
