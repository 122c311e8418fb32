import { type BandPoint, bandPoints } from "./bandPoints.ts";
import type { SharedMove } from "./commonMode.ts";
import { type CourseOptions, courseOf, fitOf, type LimitForecast } from "./courseOf.ts";
import type { CutSeries } from "./cutSeries.ts";
import { fitStretch, type StretchFit } from "./fitStretch.ts";
import type { CheckPoint, History } from "./History.ts";
import { type Hint, hints } from "./hints.ts";
import { type ScatterTrend, scatterTrend } from "./scatterTrend.ts";
import { type ServiceEffect, serviceEffects } from "./serviceEffects.ts";
import { watchLevel } from "./step/watchLevel.ts";
import type { TrendAxis } from "./trendAxis.ts";
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

export type TrendOptions = CourseOptions & {
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
  const { confidence = 0.9 } = options;
  const course = courseOf(history, options);
  const { checks, x, y, cut, forecasts, sharedUncertaintyN } = course;
  const fits = [...cut.stretches.slice(0, -1).map((stretch) => fitOf(course, stretch)), ...course.segments];
  const reach = forecasts.reduce((far, f) => Math.max(far, f.state === "crosses" ? (f.high ?? f.at ?? far) : far), 0);
  const segments = cut.stretches.map((stretch, k) => ({
    ...stretch,
    ...fits[k]!,
    band: bandPoints(fits[k]!, {
      confidence,
      shared: sharedUncertaintyN,
      upTo: k === fits.length - 1 ? reach : undefined,
    }),
  }));
  const from = cut.stretches.at(-1)?.from ?? 0;
  const own = checks.slice(from);
  const trend = {
    axis: course.axis,
    points: pointsOf(checks, x, cut),
    segments,
    steps: stepsOf(checks, x, y, cut),
    whole: fits.length === 1 ? fits[0] : x.length === 0 ? undefined : fitStretch(x, y),
    forecasts,
    alarm: alarmOf(own, cut, from),
    scatter: scatterTrend(own),
    services: serviceEffects(history),
    sharedUncertaintyN,
  };
  return {
    ...trend,
    hints: hints(history, own, trend, options.sharedMoves),
    notes: trendNotes(history, checks, trend),
  };
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
