import { median } from "../numerics/median.ts";
import type { SharedMove } from "./commonMode.ts";
import type { CheckPoint, History } from "./History.ts";
import { lateOverEarly } from "./lateOverEarly.ts";
import type { ServiceEffect } from "./serviceEffects.ts";
import type { Trend, TrendAlarm, TrendPoint, TrendStep } from "./trendOf.ts";

/** What the patterns are judged by, worked out once. Shares are fractions of the level. */
export type Facts = {
  readonly n: number;
  /** Median of the last checks, newtons. */
  readonly levelN: number;
  readonly nominalN: number | undefined;
  /** Loss a year (a fraction, down is negative) and its p, memory counted; undefined where it cannot be told. */
  readonly fall: { readonly perYear: number; readonly p: number } | undefined;
  readonly falls: boolean;
  readonly steps: readonly TrendStep[];
  readonly stepsDown: readonly TrendStep[];
  readonly scatter: Trend["scatter"];
  readonly scatterGrows: boolean;
  /** Late over early creep; undefined where it was not measured often enough. */
  readonly creepRatio: number | undefined;
  readonly alarm: TrendAlarm | undefined;
  readonly services: readonly ServiceEffect[];
  readonly strays: readonly TrendPoint[];
  /** Checks among the last five whose force did not return to zero. */
  readonly notReleased: number;
  readonly sharedMove: SharedMove | undefined;
  /** Whether all spindles were looked at together. */
  readonly looked: boolean;
};

const DAYS_A_YEAR = 365.25;

export function factsOf(
  history: History,
  own: readonly CheckPoint[],
  trend: Omit<Trend, "hints" | "notes">,
  sharedMoves: readonly SharedMove[] | undefined,
): Facts {
  const last = trend.segments.at(-1)!; // there is a point, so there is a segment
  const levelN = median(own.slice(-5).map((p) => p.valueN));
  const perX = trend.axis.kind === "date" ? DAYS_A_YEAR : (trend.axis.perDay ?? 0) * DAYS_A_YEAR;
  const p = last.memory.p;
  const fall =
    last.line === undefined || p === undefined ? undefined : { perYear: (last.line.slope * perX) / levelN, p };
  const since = own[0]!.atMs;
  return {
    n: own.length,
    levelN,
    nominalN: history.limits.nominalN,
    fall,
    falls: fall !== undefined && fall.p < 0.05 && fall.perYear < 0,
    steps: trend.steps,
    stepsDown: trend.steps.filter((s) => s.sizeN < 0),
    scatter: trend.scatter,
    scatterGrows: trend.scatter?.direction === "rises",
    creepRatio: lateOverEarly(
      Float64Array.from(own.flatMap((p) => (p.creep === undefined ? [] : [Math.abs(p.creep)]))),
    ),
    alarm: trend.alarm,
    services: trend.services,
    strays: trend.points.filter((point) => point.stray),
    notReleased: own.slice(-5).filter((check) => check.notReleased === true).length,
    sharedMove: sharedMoves?.find((m) => m.spindleIds.includes(history.spindleId) && m.sinceMs >= since),
    looked: sharedMoves !== undefined,
  };
}
