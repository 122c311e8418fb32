import type { CheckPoint } from "./History.ts";
import { inTime } from "./inTime.ts";

const DAY_MS = 86_400_000;
export const TEN_YEARS_DAYS = 3652.5;

/** What x means. */
export type TrendAxis =
  | { readonly kind: "date" /** x is days since this instant. */; readonly originMs: number }
  | {
      readonly kind: "counter" /** Tool changes a day on the whole; undefined where they do not grow. */;
      readonly perDay: number | undefined;
    };

export type AxisPlaces = {
  readonly axis: TrendAxis;
  /** The checks that have a place on it, ascending. */
  readonly checks: readonly CheckPoint[];
  readonly x: Float64Array;
  /** x ten years after the last check. */
  readonly horizon: number;
  readonly instantOf: (x: number) => number | undefined;
};

/**
 * Puts checks on the axis of dates or of tool changes. A counter is turned back into time by its mean pace; where it
 * has none, ten years cannot be told, and the horizon is ten times the span.
 */
export function trendAxis(points: readonly CheckPoint[], kind: "date" | "counter"): AxisPlaces {
  return kind === "date" ? dateAxis(points) : counterAxis(points);
}

function dateAxis(points: readonly CheckPoint[]): AxisPlaces {
  const checks = inTime(points);
  const originMs = checks[0]?.atMs ?? 0;
  const x = new Float64Array(checks.length);
  for (let i = 0; i < x.length; i += 1) x[i] = (checks[i]!.atMs - originMs) / DAY_MS;
  return {
    axis: { kind: "date", originMs },
    checks,
    x,
    horizon: (x.at(-1) ?? 0) + TEN_YEARS_DAYS,
    instantOf: (at) => instant(originMs + at * DAY_MS),
  };
}

function counterAxis(points: readonly CheckPoint[]): AxisPlaces {
  const checks = points
    .filter((p) => p.counter !== undefined)
    .sort((a, b) => a.counter! - b.counter! || a.atMs - b.atMs);
  const x = Float64Array.from(checks, (p) => p.counter!);
  const first = checks[0];
  const last = checks.at(-1);
  const days = first === undefined ? 0 : (last!.atMs - first.atMs) / DAY_MS;
  const span = first === undefined ? 0 : last!.counter! - first.counter!;
  const perDay = days > 0 && span > 0 ? span / days : undefined;
  return {
    axis: { kind: "counter", perDay },
    checks,
    x,
    horizon: (last?.counter ?? 0) + (perDay === undefined ? 10 * span : TEN_YEARS_DAYS * perDay),
    instantOf: (at) =>
      perDay === undefined ? undefined : instant(last!.atMs + ((at - last!.counter!) / perDay) * DAY_MS),
  };
}

/** The greatest instant a date can hold; a slope of nearly nothing reaches farther. */
const LAST_MS = 8.64e15;

function instant(ms: number): number | undefined {
  return Math.abs(ms) <= LAST_MS ? Math.round(ms) : undefined;
}
