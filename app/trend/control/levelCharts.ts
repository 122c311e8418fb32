import { mean } from "../../numerics/mean.ts";
import { sampleStdDev } from "../../numerics/sampleStdDev.ts";
import { BASELINE_CHECKS } from "../step/watchLevel.ts";
import { cusumChart } from "./cusumChart.ts";
import { ewmaChart } from "./ewmaChart.ts";
import { individualsChart } from "./individualsChart.ts";
import { type RunRule, runRules } from "./runRules.ts";

/** What a signal says: a run rule, a jump between neighbours, an average or a sum beyond its limit. */
export type SignalCode = RunRule | "rangeAbove" | "averageOff" | "sumOff";

export type ChartSignal = {
  /** Position of the check, from 0. */
  readonly at: number;
  readonly code: SignalCode;
  readonly side: "high" | "low";
};

export type LevelChartOptions = {
  readonly rules: readonly RunRule[];
  /** Whether a jump above the limit of the moving range signals too. */
  readonly ranges: boolean;
  readonly lambda: number;
  readonly k: number;
  readonly h: number;
};

/** All arrays hold one figure a check; where a chart has none yet, it is not finite. */
export type LevelCharts = {
  /** So many checks set center and limits; signals are looked for after them. */
  readonly baseline: number;
  readonly individuals: {
    readonly center: number;
    readonly upper: number;
    readonly lower: number;
    readonly ranges: Float64Array;
    readonly rangeUpper: number;
    readonly signals: readonly ChartSignal[];
  };
  readonly ewma: {
    readonly center: number;
    readonly values: Float64Array;
    readonly upper: Float64Array;
    readonly lower: Float64Array;
    readonly signals: readonly ChartSignal[];
  };
  readonly cusum: {
    /** In standard deviations; `low` counts downwards as a positive sum. */
    readonly high: Float64Array;
    readonly low: Float64Array;
    readonly h: number;
    readonly signals: readonly ChartSignal[];
  };
};

/**
 * The three classical charts of one spindle since its last service: its first eight checks set center and limits,
 * the later ones are held against them. Individuals take their limits from the mean moving range, as the handbooks do;
 * average and sum take the standard deviation of the eight, as the level alarm does.
 * @param values  in the order they came, each finite
 * @param strays  positions that stand off alone: drawn, but no part of the baseline
 * @returns  undefined with no check after the baseline, or where the baseline shows no scatter
 */
export function levelCharts(
  values: Float64Array,
  strays: readonly number[],
  options: LevelChartOptions,
): LevelCharts | undefined {
  const own = [...values.keys()].filter((i) => !strays.includes(i)).slice(0, BASELINE_CHECKS);
  const baseline = (own.at(-1) ?? 0) + 1;
  if (own.length < BASELINE_CHECKS || values.length <= baseline) return undefined;
  const first = Float64Array.from(own, (i) => values[i]!);
  const target = mean(first);
  const sigma = sampleStdDev(first);
  if (!(sigma > 0)) return undefined;
  const later = values.subarray(baseline);
  return {
    baseline,
    individuals: individuals(values, first, baseline, options),
    ewma: ewma(later, baseline, { lambda: options.lambda, target, sigma }),
    cusum: cusum(later, baseline, { k: options.k, h: options.h, target, sigma }),
  };
}

function individuals(
  values: Float64Array,
  first: Float64Array,
  baseline: number,
  { rules, ranges: wanted }: LevelChartOptions,
): LevelCharts["individuals"] {
  const { center, sigma, upper, lower, movingRangeUpper } = individualsChart(first);
  const z = values.map((v) => (v - center) / sigma);
  const ranges = values.map((v, i) => (i === 0 ? Number.NaN : Math.abs(v - values[i - 1]!)));
  const side = (i: number) => (values[i]! < center ? "low" : "high");
  const signals: ChartSignal[] = [];
  for (const { rule, at } of runRules(z, rules)) {
    if (at > baseline) signals.push({ at: at - 1, code: rule, side: side(at - 1) });
  }
  for (let i = baseline; wanted && i < values.length; i += 1) {
    if (ranges[i]! > movingRangeUpper)
      signals.push({ at: i, code: "rangeAbove", side: values[i]! < values[i - 1]! ? "low" : "high" });
  }
  signals.sort((a, b) => a.at - b.at);
  return { center, upper, lower, ranges, rangeUpper: movingRangeUpper, signals };
}

function ewma(
  later: Float64Array,
  baseline: number,
  options: { readonly lambda: number; readonly target: number; readonly sigma: number },
): LevelCharts["ewma"] {
  const chart = ewmaChart(later, { ...options, limits: "steady" });
  return {
    center: options.target,
    values: after(baseline, chart.values),
    upper: after(baseline, chart.upper),
    lower: after(baseline, chart.lower),
    signals: chart.signals.map((n) => ({
      at: baseline + n - 1,
      code: "averageOff",
      side: chart.values[n - 1]! < options.target ? "low" : "high",
    })),
  };
}

function cusum(
  later: Float64Array,
  baseline: number,
  options: { readonly k: number; readonly h: number; readonly target: number; readonly sigma: number },
): LevelCharts["cusum"] {
  const chart = cusumChart(later, options);
  return {
    high: after(baseline, chart.high),
    low: after(baseline, chart.low),
    h: options.h,
    signals: chart.signals.map((n) => ({
      at: baseline + n - 1,
      code: "sumOff",
      side: chart.low[n - 1]! > options.h ? "low" : "high",
    })),
  };
}

function after(baseline: number, values: Float64Array): Float64Array {
  const all = new Float64Array(baseline + values.length).fill(Number.NaN);
  all.set(values, baseline);
  return all;
}
