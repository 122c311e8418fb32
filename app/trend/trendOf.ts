import { type BandPoint, bandPoints } from "./bandPoints.ts";
import type { SharedMove } from "./commonMode.ts";
import { type CutSeries, cutSeries } from "./cutSeries.ts";
import { fitStretch, type StretchFit } from "./fitStretch.ts";
import { type Forecast, forecastLimit } from "./forecastLimit.ts";
import type { CheckPoint, History } from "./History.ts";
import { type Hint, hints } from "./hints.ts";
import { type ScatterTrend, scatterTrend } from "./scatterTrend.ts";
import { serviceCuts } from "./serviceCuts.ts";
import { type ServiceEffect, serviceEffects } from "./serviceEffects.ts";
import { watchLevel } from "./step/watchLevel.ts";
import { type AxisPlaces, type TrendAxis, trendAxis } from "./trendAxis.ts";
import { type TrendNote, trendNotes } from "./trendNotes.ts";

export type TrendPoint = {
  readonly checkId: string;
  readonly x: number;
  readonly atMs: number;
  readonly valueN: number;
  /** Position of its segment in `segments`. */
  readonly segment: number;
  /** Stands off alone, the next check is back. */
  readonly stray: boolean;
  readonly gaugeChanged: boolean;
  readonly adapterChanged: boolean;
};

/** A stretch of the history between services and clear steps; the last one is the spindle's present. */
export type Segment = StretchFit & {
  readonly startedBy: "first" | "service" | "step";
  /** Positions in `points`; `to` is the first one after it. */
  readonly from: number;
  readonly to: number;
  /** Robust line with the band its true course lies in; the last segment's goes on past the last check. */
  readonly band: readonly BandPoint[];
};

export type TrendStep = {
  /** Check before it and after it. */
  readonly lastBefore: string;
  readonly firstAfter: string;
  readonly x: number;
  readonly atMs: number;
  readonly sizeN: number;
  readonly lowN: number | undefined;
  readonly highN: number | undefined;
  /** Of the level before it. */
  readonly share: number;
  readonly p: number;
  /** False: a slope explains the values nearly as well, and the history is not cut there. */
  readonly clear: boolean;
  readonly gaugeChanged: boolean;
  readonly adapterChanged: boolean;
};

export type LimitForecast = Forecast & {
  readonly which: "warning" | "minimum";
  /** The same as `at`, `low` and `high`, as instants; undefined where they are, or where x has no pace. */
  readonly atMs: number | undefined;
  readonly lowMs: number | undefined;
  readonly highMs: number | undefined;
};

/** The check that raised the level alarm, since when, and which way. */
export type TrendAlarm = {
  readonly checkId: string;
  readonly sinceCheckId: string;
  readonly direction: "down" | "up";
};

/** Everything a spindle's page shows of its course. Forces in newtons; x as the axis says. */
export type Trend = {
  readonly axis: TrendAxis;
  readonly points: readonly TrendPoint[];
  readonly segments: readonly Segment[];
  readonly steps: readonly TrendStep[];
  /** Over all checks, services or not; undefined without a check. */
  readonly whole: StretchFit | undefined;
  readonly forecasts: readonly LimitForecast[];
  readonly alarm: TrendAlarm | undefined;
  readonly scatter: ScatterTrend | undefined;
  readonly services: readonly ServiceEffect[];
  readonly hints: readonly Hint[];
  readonly notes: readonly TrendNote[];
  /** Standard uncertainty, newtons, that the last segment's checks share and that moves its whole line. */
  readonly sharedUncertaintyN: number;
};

export type TrendOptions = {
  readonly xAxis?: "date" | "counter" | undefined;
  /** Two-sided, of band and forecast. */
  readonly confidence?: number | undefined;
  /** What `commonModes` found in all spindles: it speaks for the gauge. Undefined: nobody has looked. */
  readonly sharedMoves?: readonly SharedMove[] | undefined;
};

/**
 * A spindle's course: segments between services and clear steps, each with its robust line, test and band; forecasts
 * for warning and minimum from the last segment; what happened at each service; hints. Every number is exact for the
 * checks given: a check voided later is simply not among them any more.
 * @param history  checks in any order; voided ones left out
 * @returns  with no check, or none that has a counter on that axis: a trend without points
 */
export function trendOf(history: History, options: TrendOptions = {}): Trend {
  const { confidence = 0.9, xAxis = "date" } = options;
  const axis = trendAxis(history.points, xAxis);
  const checks = axis.checks;
  const x = axis.x;
  const y = Float64Array.from(checks, (p) => p.valueN);
  const starts = serviceCuts(checks, history.events).map((cut) => cut.firstAfter);
  const cut = cutSeries(x, y, starts);
  const fits = cut.stretches.map(({ from, to }) =>
    fitStretch(x.subarray(from, to), y.subarray(from, to), inside(cut.strays, from, to)),
  );
  const last = fits.at(-1);
  const lastStretch = cut.stretches.at(-1);
  const own = lastStretch === undefined ? [] : checks.slice(lastStretch.from, lastStretch.to);
  const shared = last === undefined ? 0 : sharedUncertainty(own, last);
  const forecasts = last === undefined ? [] : forecastsOf(history, last, axis, confidence, shared);
  const reach = forecasts.reduce((far, f) => Math.max(far, f.state === "crosses" ? (f.high ?? f.at ?? far) : far), 0);
  const segments = cut.stretches.map((stretch, k) => ({
    ...stretch,
    ...fits[k]!,
    band: bandPoints(fits[k]!, { confidence, shared, upTo: k === fits.length - 1 ? reach : undefined }),
  }));
  const points = pointsOf(checks, x, cut);
  const trend = {
    axis: axis.axis,
    points,
    segments,
    steps: stepsOf(checks, x, y, cut),
    whole: wholeFit(x, y, fits),
    forecasts,
    alarm: alarmOf(own, cut, lastStretch?.from ?? 0),
    scatter: scatterTrend(own),
    services: serviceEffects(history),
    sharedUncertaintyN: shared,
  };
  return {
    ...trend,
    hints: hints(history, own, trend, options.sharedMoves),
    notes: trendNotes(history, checks, trend),
  };
}

function inside(positions: readonly number[], from: number, to: number): number[] {
  return positions.filter((i) => i >= from && i < to).map((i) => i - from);
}

function wholeFit(x: Float64Array, y: Float64Array, fits: readonly StretchFit[]): StretchFit | undefined {
  if (fits.length === 1) return fits[0];
  return x.length === 0 ? undefined : fitStretch(x, y);
}

/**
 * What all checks of the segment share: as filed, else what their stated uncertainty has beyond the scatter seen,
 * since that part cannot be random from check to check.
 */
function sharedUncertainty(own: readonly CheckPoint[], fit: StretchFit): number {
  const filed = own.flatMap((p) => (p.commonUncertaintyN === undefined ? [] : [p.commonUncertaintyN]));
  if (filed.length > 0) return Math.sqrt(meanSquare(filed));
  const stated = own.flatMap((p) => (p.standardUncertaintyN === undefined ? [] : [p.standardUncertaintyN]));
  const s = fit.yardstick?.s ?? 0;
  return stated.length === 0 ? 0 : Math.sqrt(Math.max(0, meanSquare(stated) - s * s));
}

const meanSquare = (values: readonly number[]) => values.reduce((sum, v) => sum + v * v, 0) / values.length;

function forecastsOf(
  history: History,
  fit: StretchFit,
  { horizon, instantOf }: AxisPlaces,
  confidence: number,
  shared: number,
): LimitForecast[] {
  const { warningN, minimumN } = history.limits;
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

function pointsOf(checks: readonly CheckPoint[], x: Float64Array, cut: CutSeries): TrendPoint[] {
  const strays = new Set(cut.strays);
  let segment = 0;
  return checks.map((check, i) => {
    while (i >= cut.stretches[segment]!.to) segment += 1;
    const before = checks[i - 1];
    return {
      checkId: check.checkId,
      x: x[i]!,
      atMs: check.atMs,
      valueN: check.valueN,
      segment,
      stray: strays.has(i),
      gaugeChanged: before !== undefined && before.gaugeId !== check.gaugeId,
      adapterChanged: before !== undefined && before.adapterId !== check.adapterId,
    };
  });
}

function stepsOf(checks: readonly CheckPoint[], x: Float64Array, y: Float64Array, cut: CutSeries): TrendStep[] {
  return cut.steps.map((step) => {
    const before = checks[step.lastBefore]!;
    const after = checks[step.firstAfter]!;
    return {
      lastBefore: before.checkId,
      firstAfter: after.checkId,
      x: x[step.firstAfter]!,
      atMs: after.atMs,
      sizeN: step.size,
      lowN: step.low,
      highN: step.high,
      share: step.size / y[step.lastBefore]!,
      p: step.p,
      clear: step.clear,
      gaugeChanged: before.gaugeId !== after.gaugeId,
      adapterChanged: before.adapterId !== after.adapterId,
    };
  });
}

function alarmOf(own: readonly CheckPoint[], cut: CutSeries, from: number): TrendAlarm | undefined {
  const kept = own.filter((_, i) => !cut.strays.includes(from + i));
  const alarm = watchLevel(Float64Array.from(kept, (p) => p.valueN))?.alarm;
  if (alarm === undefined) return undefined;
  return {
    checkId: kept[alarm.at]!.checkId,
    sinceCheckId: kept[alarm.since]!.checkId,
    direction: alarm.direction,
  };
}
