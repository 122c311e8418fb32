import { type CutSeries, cutSeries, type Stretch } from "./cutSeries.ts";
import { fitStretch, type StretchFit } from "./fitStretch.ts";
import { type Forecast, forecastLimit } from "./forecastLimit.ts";
import type { CheckPoint, CoursePoint, History } from "./History.ts";
import { serviceCuts } from "./serviceCuts.ts";
import { type AxisPlaces, type TrendAxis, trendAxis } from "./trendAxis.ts";

export type LimitForecast = Forecast & {
  readonly which: "warning" | "minimum";
  /** The same as `at`, `low` and `high`, as instants; undefined where they are, or where x has no pace. */
  readonly atMs: number | undefined;
  readonly lowMs: number | undefined;
  readonly highMs: number | undefined;
};

/** Where a spindle is going, without what only its own page shows: all that a ranking of many needs. */
export type Course<P extends CoursePoint = CheckPoint> = {
  readonly axis: TrendAxis;
  readonly checks: readonly P[];
  /** The same checks, named as a `Trend` names them. */
  readonly points: readonly P[];
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly cut: CutSeries;
  /** Of the last stretch alone; empty without a check. */
  readonly segments: readonly StretchFit[];
  readonly forecasts: readonly LimitForecast[];
  /** Standard uncertainty, newtons, that the last stretch's checks share and that moves its whole line. */
  readonly sharedUncertaintyN: number;
};

export type CourseOptions = {
  readonly xAxis?: "date" | "counter" | undefined;
  /** Two-sided, of band and forecast. */
  readonly confidence?: number | undefined;
};

/**
 * Cuts a history at its services and clear steps, fits the last stretch, and foretells when it reaches the limits.
 * @param history  checks in any order; voided ones left out
 */
export function courseOf<P extends CoursePoint>(
  history: History<P>,
  { xAxis = "date", confidence = 0.9 }: CourseOptions = {},
): Course<P> {
  const places = trendAxis(history.points, xAxis);
  const { axis, checks, x } = places;
  const y = new Float64Array(checks.length);
  for (let i = 0; i < y.length; i += 1) y[i] = checks[i]!.valueN;
  const starts = serviceCuts(checks, history.events).map((cut) => cut.firstAfter);
  const cut = cutSeries(x, y, starts);
  const stretch = cut.stretches.at(-1);
  const plain = { axis, checks, points: checks, x, y, cut };
  if (stretch === undefined) return { ...plain, segments: [], forecasts: [], sharedUncertaintyN: 0 };
  const fit = fitOf(plain, stretch);
  const shared = sharedUncertainty(checks.slice(stretch.from), fit);
  const forecasts = forecastsOf(history, fit, places, confidence, shared);
  return { ...plain, segments: [fit], forecasts, sharedUncertaintyN: shared };
}

/** Tests and lines of one stretch of it. */
export function fitOf({ x, y, cut }: Pick<Course, "x" | "y" | "cut">, { from, to }: Stretch): StretchFit {
  const strays = cut.strays.filter((i) => i >= from && i < to).map((i) => i - from);
  return fitStretch(x.subarray(from, to), y.subarray(from, to), strays);
}

/**
 * What all checks of the stretch share: as filed, else what their stated uncertainty has beyond the scatter seen,
 * since that part cannot be random from check to check.
 */
function sharedUncertainty(own: readonly CoursePoint[], fit: StretchFit): number {
  const filed = meanSquare(own, (p) => p.commonUncertaintyN);
  if (filed !== undefined) return Math.sqrt(filed);
  const stated = meanSquare(own, (p) => p.standardUncertaintyN);
  const s = fit.yardstick?.s ?? 0;
  return stated === undefined ? 0 : Math.sqrt(Math.max(0, stated - s * s));
}

/** Over the checks that have it; undefined where none has. */
function meanSquare(own: readonly CoursePoint[], of: (p: CoursePoint) => number | undefined): number | undefined {
  let n = 0;
  let sum = 0;
  for (const point of own) {
    const value = of(point);
    if (value === undefined) continue;
    n += 1;
    sum += value * value;
  }
  return n === 0 ? undefined : sum / n;
}

function forecastsOf(
  { limits: { warningN, minimumN } }: Pick<History, "limits">,
  fit: StretchFit,
  { horizon, instantOf }: AxisPlaces,
  confidence: number,
  shared: number,
): LimitForecast[] {
  return [
    { which: "warning" as const, limit: warningN },
    { which: "minimum" as const, limit: minimumN },
  ].flatMap(({ which, limit }) => {
    if (limit === undefined) return [];
    const forecast = forecastLimit(fit, limit, { confidence, horizon, shared });
    const instant = (at: number | undefined) => (at === undefined ? undefined : instantOf(at));
    const { at, low, high } = forecast;
    return [{ which, ...forecast, atMs: instant(at), lowMs: instant(low), highMs: instant(high) }];
  });
}
