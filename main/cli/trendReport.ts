import { mean } from "../../app/numerics/mean.ts";
import { sampleStdDev } from "../../app/numerics/sampleStdDev.ts";
import { cusumRunLength, ewmaRunLength } from "../../app/trend/control/runLength.ts";
import type { Forecast } from "../../app/trend/forecastLimit.ts";
import { predictionLimits } from "../../app/trend/predictionLimits.ts";
import type { SeriesTrend } from "../../app/trend/seriesTrend.ts";
import { toleranceFactor } from "../../app/trend/toleranceFactor.ts";
import type { TrendFile } from "./readTrendCsv.ts";
import type { TrendChoices } from "./trendOptions.ts";
import { trendRemarks } from "./trendRemarks.ts";

export type TrendReport = ReturnType<typeof trendReport>;

/**
 * The JSON document of `holdfast trend`. Values, sizes and limits are in `unit`, slopes in `unit` per unit of x (a
 * day, where x is a date); rows are counted from 1 in the order of x. `null` where a thing does not exist.
 */
export function trendReport(table: TrendFile, found: SeriesTrend, choices: TrendChoices) {
  const { whole, last, steps, stretches, pettitt, partialSums, runsTest } = found;
  const { mannKendall: test, memory, line, yardstick } = whole;
  return {
    n: table.y.length,
    unit: table.unit,
    valueColumn: table.valueColumn,
    x: {
      column: table.xColumn ?? null,
      kind: table.xKind,
      first: isoOf(table, 0),
      firstX: whole.firstX,
      lastX: whole.lastX,
    },
    mannKendall: {
      s: test.s,
      varS: test.varS,
      z: test.z,
      p: test.p,
      tauA: test.tauA ?? null,
      tauB: test.tauB ?? null,
      method: test.method,
      pNormal: test.pNormal,
      leastP: test.leastP ?? null,
    },
    autocorrelation: {
      lag1: memory.lag1,
      found: memory.found,
      varianceFactor: memory.varianceFactor,
      p: memory.p ?? null,
    },
    theilSen: {
      slope: line?.slope ?? null,
      intercept: line?.intercept ?? null,
      low: line?.low ?? null,
      high: line?.high ?? null,
      confidence: 0.95,
      lowRounded: line?.lowRounded ?? null,
      highRounded: line?.highRounded ?? null,
    },
    leastSquares:
      yardstick === undefined
        ? null
        : {
            slope: yardstick.slope,
            intercept: yardstick.intercept,
            residualSd: yardstick.s,
            slopeSd: yardstick.s / Math.sqrt(yardstick.sxx),
          },
    segments: stretches.map(({ from, to, startedBy }) => ({ first: from + 1, last: to, startedBy })),
    changePoints: steps.map((step) => ({
      index: step.lastBefore + 1,
      x: table.x[step.lastBefore]!,
      size: step.size,
      low: step.low ?? null,
      high: step.high ?? null,
      confidence: 0.95,
      p: step.p,
      clear: step.clear,
      at: isoOf(table, table.x[step.lastBefore]!),
    })),
    strays: found.strays.map((i) => i + 1),
    pettitt: pettitt === undefined ? null : { k: pettitt.k, index: pettitt.index, p: pettitt.p },
    partialSums: partialSums ?? null,
    runsTest: runsTest ?? null,
    individuals: individualsOf(found),
    runSignals: found.runSignals,
    ewma: {
      lambda: found.ewma.lambda,
      center: found.ewma.center,
      sigma: found.ewma.sigma,
      values: [...found.ewma.values],
      upper: [...found.ewma.upper],
      lower: [...found.ewma.lower],
      signals: found.ewma.signals,
      averageRunLength: ewmaRunLength(choices.lambda, 3, 0),
    },
    cusum: cusumOf(found, choices),
    expected: expectedOf(table, found),
    forecast: found.forecasts.map((forecast, i) => forecastOf(table, forecast, choices.limits[i]!.given)),
    forecastRows: last.n,
    notes: trendRemarks(table, found),
  };
}

/** An instant for x, where x is dates. */
function isoOf({ originMs }: TrendFile, x: number | undefined): string | null {
  if (originMs === undefined || x === undefined) return null;
  const date = new Date(originMs + x * 86_400_000);
  return Number.isFinite(date.getTime()) ? date.toISOString() : null; // farther than a date can hold
}

function individualsOf({ individuals }: SeriesTrend) {
  if (individuals === undefined) return null;
  const { center, sigma, upper, lower, signals, meanMovingRange, movingRangeUpper, movingRangeSignals } = individuals;
  return { center, sigma, upper, lower, signals, meanMovingRange, movingRangeUpper, movingRangeSignals };
}

function cusumOf({ cusum }: SeriesTrend, { k, h }: TrendChoices) {
  if (cusum === undefined) return null;
  const { target, sigma, high, low, signals } = cusum;
  return { k, h, target, sigma, high: [...high], low: [...low], signals, averageRunLength: cusumRunLength(k, h, 0) };
}

/** Where the next value lies if nothing changes; told only of a last stretch that shows no trend. */
function expectedOf(table: TrendFile, { last, stretches }: SeriesTrend) {
  const y = table.y.subarray(stretches.at(-1)!.from);
  if (y.length < 4 || last.memory.p === undefined || last.memory.p < 0.05) return null;
  const next = predictionLimits(y, 1, 0.95, "two");
  const factor = toleranceFactor(y.length, 0.95, 0.95, "one");
  return {
    next: { ...next, confidence: 0.95 },
    atLeast: { value: mean(y) - factor * sampleStdDev(y), share: 0.95, confidence: 0.95 },
  };
}

function forecastOf(table: TrendFile, forecast: Forecast, given: string) {
  const { limit, state, at, low, high, confidence, beyondThreeSpans } = forecast;
  return {
    limit,
    state,
    at: at ?? null,
    low: low ?? null,
    high: high ?? null,
    confidence,
    given,
    beyondThreeSpans,
    atDate: isoOf(table, at),
    lowDate: isoOf(table, low),
    highDate: isoOf(table, high),
  };
}
