import type { CoursePoint } from "./History.ts";
import { inTime } from "./inTime.ts";

const DAY_MS = 86_400_000;
export const TEN_YEARS_DAYS = 3652.5;

/** What x means. */
export type TrendAxis =
  | { readonly kind: "date" /** x is days since this instant. */; readonly originMs: number }
  | {
      readonly kind: "counter" /** Tool changes a day on the whole; undefined where they do not grow. */;
      readonly perDay: number | undefined;
      /** Where the counter began anew, oldest first. */
      readonly restarts: readonly CounterRestart[];
    };

/** Between two checks the counter began anew, as with an exchanged control. */
export type CounterRestart = {
  /** Of the last check before it. */
  readonly lastMs: number;
  readonly lastCounter: number;
  /** Of the first check after it. */
  readonly firstMs: number;
  /** What is added to the counters after it. */
  readonly offset: number;
};

export type AxisPlaces<P extends CoursePoint = CoursePoint> = {
  readonly axis: TrendAxis;
  /** The checks that have a place on it, ascending. */
  readonly checks: readonly P[];
  readonly x: Float64Array;
  /** x ten years after the last check. */
  readonly horizon: number;
  readonly instantOf: (x: number) => number | undefined;
};

/**
 * Puts checks on the axis of dates or of tool changes. A counter that began anew is counted on. It is turned back into
 * time by its mean pace; where it has none, ten years cannot be told, and the horizon is ten times the span.
 */
export function trendAxis<P extends CoursePoint>(points: readonly P[], kind: "date" | "counter"): AxisPlaces<P> {
  return kind === "date" ? dateAxis(points) : counterAxis(points);
}

function dateAxis<P extends CoursePoint>(points: readonly P[]): AxisPlaces<P> {
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

function counterAxis<P extends CoursePoint>(points: readonly P[]): AxisPlaces<P> {
  const { placed, restarts } = countedOn(inTime(points).filter((p) => p.counter !== undefined));
  placed.sort((a, b) => a.x - b.x || a.check.atMs - b.check.atMs);
  const checks = placed.map(({ check }) => check);
  const x = Float64Array.from(placed, (p) => p.x);
  const first = checks[0];
  const last = checks.at(-1);
  const lastX = x.at(-1) ?? 0;
  const days = first === undefined ? 0 : (last!.atMs - first.atMs) / DAY_MS;
  const span = lastX - (x[0] ?? 0);
  const perDay = days > 0 && span > 0 ? span / days : undefined;
  return {
    axis: { kind: "counter", perDay, restarts },
    checks,
    x,
    horizon: lastX + (perDay === undefined ? 10 * span : TEN_YEARS_DAYS * perDay),
    instantOf: (at) => (perDay === undefined ? undefined : instant(last!.atMs + ((at - lastX) / perDay) * DAY_MS)),
  };
}

/**
 * Counters that began anew (an exchanged control) are counted on from where they stood. A single one that lies under the one
 * before, with the next above it again, is a slip of writing and stays as it is.
 * @param checks  with a counter each, in the order of time
 */
function countedOn<P extends CoursePoint>(
  checks: readonly P[],
): { placed: { check: P; x: number }[]; restarts: CounterRestart[] } {
  let offset = 0;
  const restarts: CounterRestart[] = [];
  const placed = checks.map((check, i) => {
    const counter = check.counter!;
    const [earlier, before, next] = [checks[i - 2]?.counter, checks[i - 1]?.counter, checks[i + 1]?.counter];
    const low = before !== undefined && counter < before && counter < (earlier ?? before);
    if (low && (next === undefined || (next >= counter && next < before))) {
      offset += before;
      restarts.push({ lastMs: checks[i - 1]!.atMs, lastCounter: before, firstMs: check.atMs, offset });
    }
    return { check, x: offset + counter };
  });
  return { placed, restarts };
}

/**
 * Where what happened between checks stands on an axis of tool changes.
 * @param counter  as the machine showed it then
 */
export function counterPlace(restarts: readonly CounterRestart[], atMs: number, counter: number): number {
  // Between the two checks about a restart the counter itself tells whether it had begun anew.
  const passed = restarts.findLast((r) => atMs >= r.firstMs || (atMs >= r.lastMs && counter < r.lastCounter));
  return counter + (passed?.offset ?? 0);
}

/** The greatest instant a date can hold; a slope of nearly nothing reaches farther. */
const LAST_MS = 8.64e15;

function instant(ms: number): number | undefined {
  return Math.abs(ms) <= LAST_MS ? Math.round(ms) : undefined;
}
