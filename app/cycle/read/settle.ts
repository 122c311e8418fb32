import { groupedMedian } from "../../numerics/groupedMedian.ts";
import { median } from "../../numerics/median.ts";
import { sampleStdDev } from "../../numerics/sampleStdDev.ts";
import type { Ground } from "./Ground.ts";
import type { HoldBounds } from "./holdBounds.ts";
import { ringEnd } from "./ringPeriod.ts";
import { type Line, lineFit, noiseOverSteps, residualsOf, roundingOfMedian, scatterOf } from "./scatter.ts";
import { enough, secondsOf, settledIsHidden, settledStretch } from "./settledWindow.ts";
import { logOf, type WindowReadings, windowReadings } from "./windowReadings.ts";

export type Settled = {
  readonly indication: number;
  readonly standardN: number;
  readonly fromIndex: number;
  readonly toIndex: number;
  readonly n: number;
  readonly effectiveN: number;
  readonly noiseN: number;
  readonly slopeNPerS: number | undefined;
  /** Change over the window by the fit to log time, newtons. */
  readonly creepN: number | undefined;
  readonly short: boolean;
};

/** Share of the creep by which its middle may lie off the line in log time. */
const bend = 0.002;

/**
 * The settled force of a hold: median of its readings from 1 s to 3 s after the force has arrived; of a shorter hold
 * those from 1 s on; where they are fewer than eight, those of its later half, marked short. Without a known rate
 * there is no second to count: the later two thirds of the hold are taken.
 * A force that creeps through the window beyond doubt is followed by its fit to log time, and the median is
 * taken of what is left: it lies at the middle of the window as the plain median does, but rests on all readings and
 * not on the few in the middle.
 * @param slips  the force steps inside the hold: nothing is followed
 * @param restNoise  residuals of the readings at rest, which show how long the noise remembers
 * @returns  undefined when overload hides it, or the hold has no reading
 */
export function settle(
  g: Ground,
  hold: HoldBounds,
  slips: boolean,
  restNoise: readonly Float64Array[],
): Settled | undefined {
  if (settledIsHidden(g, hold)) return undefined;
  const { from, to, short } = settledStretch(g, hold);
  const readings = windowReadings(g, hold, from, to);
  return readings === undefined ? undefined : figures(g, hold, readings, slips, restNoise, short);
}

function figures(
  g: Ground,
  hold: HoldBounds,
  { x, y, seconds }: WindowReadings,
  slips: boolean,
  restNoise: readonly Float64Array[],
  short: boolean,
): Settled {
  const n = y.length;
  const logTime = seconds === undefined ? x : logOf(seconds);
  const trend = lineFit(logTime, y);
  const residuals = residualsOf(logTime, y, trend, n >= enough);
  const scatter = scatterOf(residuals, restNoise);
  const noise = n >= 4 ? scatter.sigmaN : Math.max(scatter.sigmaN, g.sigmaN);
  const change = trend.slope * (logTime[n - 1]! - logTime[0]!);
  const clear = Math.max(4 * noise * Math.sqrt(12 / scatter.effectiveN), noise < 0.5 * g.stepN ? g.stepN : 0);
  const creeps = !slips && n >= enough && Math.abs(change) > clear && !stillRings(g, hold, x[0]!);
  const slope = seconds === undefined ? undefined : lineFit(seconds, y).slope;
  const own = medianUncertainty(y, noise, n >= 4 ? scatter : { ...scatter, widening: 1 }, g.stepN);
  return {
    indication: creeps ? median(residuals.values) + lineAt(trend, middleOf(logTime)) : plainMedian(y, noise, g.stepN),
    // A force that creeps is another one a little later: the window is no better known than the arrival. And it need
    // not creep just with log time.
    standardN: Math.hypot(own, (slope ?? 0) * secondsOf(g, hold.beforeError), creeps ? bend * change : 0),
    fromIndex: x[0]!,
    toIndex: x[n - 1]!,
    n,
    effectiveN: effective(scatter.effectiveN, noise, own),
    noiseN: n >= 2 ? sampleStdDev(y) : 0,
    slopeNPerS: slope,
    creepN: seconds === undefined ? undefined : change,
    short,
  };
}

/** Readings that are all one figure are one reading, however many: the rounding hides the rest. */
function effective(independent: number, noise: number, own: number): number {
  return own > 0 ? Math.max(1, Math.min(independent, (Math.PI / 2) * (noise / own) ** 2)) : 1;
}

/** A ring that reaches into the window is no creep. */
function stillRings(g: Ground, hold: HoldBounds, from: number): boolean {
  return ringEnd(g, hold.arrival, from, hold.levelN, 0.002) >= from;
}

const lineAt = (line: Line, x: number) => line.meanY + line.slope * (x - line.meanX);

/** Of values in order. */
function middleOf(ordered: Float64Array): number {
  return (ordered[(ordered.length - 1) >> 1]! + ordered[ordered.length >> 1]!) / 2;
}

const plainMedian = (y: Float64Array, noise: number, stepN: number) =>
  stepN > 0 && noise < 10 * stepN ? groupedMedian(y, stepN) : median(y);

/**
 * Standard uncertainty of the median: sqrt(pi / 2) that of the mean for normal noise. Where the noise is under a step
 * the share of readings in the middle step takes the place of the normal density.
 */
function medianUncertainty(
  y: Float64Array,
  noise: number,
  scatter: { medianMemory: number; widening: number },
  stepN: number,
): number {
  const independent = y.length / scatter.medianMemory;
  let own = (Math.sqrt(Math.PI / 2) * noise) / Math.sqrt(independent);
  if (stepN > 0 && noise < stepN) {
    const middle = median(y);
    let within = 0;
    for (const v of y) if (Math.abs(v - middle) <= stepN / 2) within += 1;
    own = Math.max(
      own,
      within < y.length ? (stepN * y.length) / Math.max(1, within) / (2 * Math.sqrt(independent)) : 0,
    );
  }
  return Math.sqrt((scatter.widening * own) ** 2 + roundingOfMedian(noiseOverSteps(y, noise, stepN), stepN));
}
