import { mean } from "../numerics/mean.ts";
import { type RunsTest, runsTest } from "../numerics/runsTest.ts";
import { type CusumChart, cusumChart } from "./control/cusumChart.ts";
import { type EwmaChart, ewmaChart } from "./control/ewmaChart.ts";
import { type IndividualsChart, individualsChart } from "./control/individualsChart.ts";
import { movingRangeSigma } from "./control/movingRangeSigma.ts";
import { type RunRule, type RunSignal, runRules } from "./control/runRules.ts";
import { type CutSeries, cutSeries } from "./cutSeries.ts";
import { fitStretch, type StretchFit } from "./fitStretch.ts";
import { type Forecast, forecastLimit } from "./forecastLimit.ts";
import { type PartialSums, partialSums } from "./step/partialSums.ts";
import { type Pettitt, pettitt } from "./step/pettitt.ts";

export type SeriesOptions = {
  /** First positions after a service. */
  readonly starts: readonly number[];
  /** Lower limits, in the unit of y. */
  readonly limits: readonly number[];
  /** x up to which a forecast is looked for. */
  readonly horizon: number;
  readonly lambda: number;
  readonly k: number;
  readonly h: number;
  /** Center of the EWMA and the CUSUM; the mean when absent. */
  readonly target: number | undefined;
  /** From the mean moving range when absent. */
  readonly sigma: number | undefined;
  readonly chartLimits: "startup" | "steady";
  readonly rules: readonly RunRule[];
};

export type SeriesTrend = CutSeries & {
  /** Over all values. */
  readonly whole: StretchFit;
  /** Over the last stretch. */
  readonly last: StretchFit;
  readonly forecasts: readonly Forecast[];
  readonly pettitt: Pettitt | undefined;
  readonly partialSums: PartialSums | undefined;
  readonly runsTest: RunsTest | undefined;
  readonly individuals: IndividualsChart | undefined;
  readonly runSignals: readonly RunSignal[];
  readonly ewma: EwmaChart;
  /** Undefined where nothing scatters and values are off the target: no sigma to count in. */
  readonly cusum: CusumChart | undefined;
};

/**
 * All that can be said of a bare series of values: tests, slope and charts over all of them, steps between the
 * services, forecasts from the last stretch. The same functions serve a spindle's page.
 * @param x  ascending, each finite; one or more
 * @param y  as many as `x`
 */
export function seriesTrend(x: Float64Array, y: Float64Array, options: SeriesOptions): SeriesTrend {
  const { starts, limits, horizon, lambda, k, h, chartLimits, rules } = options;
  const cut = cutSeries(x, y, starts);
  const { from, to } = cut.stretches.at(-1)!; // one value makes one stretch
  const own = cut.strays.filter((i) => i >= from).map((i) => i - from);
  const whole = fitStretch(x, y, cut.strays);
  const last = from === 0 ? whole : fitStretch(x.subarray(from, to), y.subarray(from, to), own);
  const target = options.target ?? mean(y);
  const sigma = options.sigma ?? movingRangeSigma(y) ?? 0;
  const individuals = y.length < 2 ? undefined : individualsChart(y);
  return {
    ...cut,
    whole,
    last,
    forecasts: limits.map((limit) => forecastLimit(last, limit, { horizon })),
    pettitt: y.length < 2 ? undefined : pettitt(y),
    partialSums: y.length < 3 ? undefined : partialSums(y),
    runsTest: runsTest(y),
    individuals,
    runSignals: individuals === undefined || !(individuals.sigma > 0) ? [] : signalsOf(y, individuals, rules),
    ewma: ewmaChart(y, { lambda, target, sigma, limits: chartLimits }),
    cusum: cusumOf(y, { k, h, target, sigma }),
  };
}

function signalsOf(y: Float64Array, chart: IndividualsChart, rules: readonly RunRule[]): RunSignal[] {
  return runRules(
    y.map((v) => (v - chart.center) / chart.sigma),
    rules,
  );
}

function cusumOf(
  y: Float64Array,
  options: { k: number; h: number; target: number; sigma: number },
): CusumChart | undefined {
  if (options.sigma > 0) return cusumChart(y, options);
  // Nothing scatters: on the target nothing adds up either, off it there is no unit to add up in.
  const { target } = options;
  if (y.some((v) => Math.abs(v - target) > 1e-12 * Math.abs(target))) return undefined;
  return { ...options, high: new Float64Array(y.length), low: new Float64Array(y.length), signals: [] };
}
