import { mean } from "../../numerics/mean.ts";
import { D2_OF_TWO, meanMovingRange } from "./movingRangeSigma.ts";

export type IndividualsChart = {
  readonly center: number;
  readonly sigma: number;
  readonly upper: number;
  readonly lower: number;
  /** Values outside the limits, counted from 1. */
  readonly signals: readonly number[];
  readonly meanMovingRange: number;
  readonly movingRangeUpper: number;
  /** Ranges above their limit, by the number (from 1) of the later value. */
  readonly movingRangeSignals: readonly number[];
};

/** Upper limit of a range of two over the mean range, as the printed tables round it. */
export const D4_OF_TWO = 3.267;

/**
 * Individuals and moving-range chart: center the mean, limits three standard deviations off, these from the mean
 * moving range. Known limits alarm on one unchanged value in 370.
 * @param values  in the order they came, each finite; two or more
 * @throws RangeError  fewer than two values
 * @see NIST/SEMATECH e-Handbook 6.3.2.2; ASTM MNL 7 (2002)
 */
export function individualsChart(values: ArrayLike<number>): IndividualsChart {
  const range = meanMovingRange(values);
  if (range === undefined) throw new RangeError(`individualsChart requires at least two values, got ${values.length}`);
  const center = mean(values);
  const sigma = range / D2_OF_TWO;
  const upper = center + 3 * sigma;
  const lower = center - 3 * sigma;
  const movingRangeUpper = D4_OF_TWO * range;
  const signals: number[] = [];
  const movingRangeSignals: number[] = [];
  for (let i = 0; i < values.length; i += 1) {
    if (values[i]! > upper || values[i]! < lower) signals.push(i + 1);
    if (i > 0 && Math.abs(values[i]! - values[i - 1]!) > movingRangeUpper) movingRangeSignals.push(i + 1);
  }
  return { center, sigma, upper, lower, signals, meanMovingRange: range, movingRangeUpper, movingRangeSignals };
}
