import type { Verdict } from "../verdict/Judgement.ts";
import { chanceBelow } from "./chanceBelow.ts";
import type { LimitForecast } from "./courseOf.ts";
import type { StretchFit } from "./fitStretch.ts";
import type { ForecastState } from "./forecastLimit.ts";
import type { TrendAxis } from "./trendAxis.ts";

/** What the ranking reads of a spindle: a `Course`, or the whole `Trend` of its page. */
export type RankedCourse = {
  readonly axis: TrendAxis;
  readonly points: readonly { readonly atMs: number; readonly valueN: number }[];
  /** The last one is the present. */
  readonly segments: readonly StretchFit[];
  readonly forecasts: readonly LimitForecast[];
  readonly sharedUncertaintyN: number;
};

/** One spindle of the works, as the ranking needs it. */
export type FleetEntry = {
  readonly spindleId: string;
  readonly trend: RankedCourse;
  readonly minimumN: number | undefined;
  /** Of the last check; undefined: never measured. */
  readonly verdict: Verdict | undefined;
  /** A `stop` that nobody has released. */
  readonly stopped: boolean;
  /** When it is measured next by plan; undefined: no round is planned. */
  readonly nextRoundMs: number | undefined;
};

/** Why a spindle stands where it stands, the gravest first: the order of the ranking. */
export type FleetReason =
  | "stopped"
  | "belowMinimum"
  | "verdictAct"
  | "riskAtRound"
  | "belowWarning"
  | "reachesMinimum"
  | "verdictWatch"
  | "reachesWarning"
  | "neverMeasured"
  | "cannotTell"
  | "steady";

export type FleetPlace = {
  readonly spindleId: string;
  /** 1 is the first to do. */
  readonly rank: number;
  /** Chance of lying below the minimum at the next planned round; undefined when it cannot be told. */
  readonly risk: number | undefined;
  readonly forecast: {
    readonly state: ForecastState;
    readonly limit: "warning" | "minimum";
    readonly atMs: number | undefined;
    readonly lowMs: number | undefined;
    readonly highMs: number | undefined;
  };
  readonly why: { readonly code: FleetReason };
};

/** From this chance on a spindle is ranked by it; common practice, no source. */
const RISKY = 0.05;

/**
 * The order in which to service spindles: those that must not cut, those to act on, those likely to be below their minimum
 * at the next round (by that chance), those on their way there (by expected date), those watched, those on their way
 * to the warning, those nobody can tell of, and last those that hold. Equal ones go by the lesser force over the minimum, then by id, so that the order
 * never jumps.
 */
export function rankFleet(entries: readonly FleetEntry[]): FleetPlace[] {
  const placed = entries.map((entry) => {
    const risk = riskOf(entry);
    const why = reasonOf(entry, risk);
    return { entry, risk, why, forecast: shownForecast(entry.trend, why), margin: marginOf(entry) };
  });
  placed.sort(
    (a, b) =>
      order.indexOf(a.why) - order.indexOf(b.why) ||
      (a.why === "riskAtRound" ? b.risk! - a.risk! : 0) ||
      compare(a.forecast?.atMs, b.forecast?.atMs) ||
      compare(a.margin, b.margin) ||
      (a.entry.spindleId < b.entry.spindleId ? -1 : 1),
  );
  return placed.map(({ entry, risk, why, forecast }, i) => ({
    spindleId: entry.spindleId,
    rank: i + 1,
    risk,
    forecast: {
      state: forecast?.state ?? "cannotTell",
      limit: forecast?.which ?? "minimum",
      atMs: forecast?.atMs,
      lowMs: forecast?.lowMs,
      highMs: forecast?.highMs,
    },
    why: { code: why },
  }));
}

const order: readonly FleetReason[] = [
  "stopped",
  "belowMinimum",
  "verdictAct",
  "riskAtRound",
  "belowWarning",
  "reachesMinimum",
  "verdictWatch",
  "reachesWarning",
  "neverMeasured",
  "cannotTell",
  "steady",
];

function reasonOf({ trend, verdict, stopped }: FleetEntry, risk: number | undefined): FleetReason {
  const minimum = trend.forecasts.find((f) => f.which === "minimum");
  const warning = trend.forecasts.find((f) => f.which === "warning");
  if (stopped || verdict === "stop") return "stopped";
  if (minimum?.state === "already") return "belowMinimum";
  if (verdict === "act") return "verdictAct";
  if (risk !== undefined && risk >= RISKY) return "riskAtRound";
  if (warning?.state === "already") return "belowWarning";
  if (minimum?.state === "crosses") return "reachesMinimum";
  if (verdict === "watch") return "verdictWatch";
  if (warning?.state === "crosses") return "reachesWarning";
  if (trend.points.length === 0) return "neverMeasured";
  const told = trend.forecasts.some((f) => f.state === "notWithinTenYears");
  return told ? "steady" : "cannotTell";
}

/** Of the minimum, or of the warning where that is the reason. */
function shownForecast(trend: RankedCourse, why: FleetReason): LimitForecast | undefined {
  const wanted = why === "belowWarning" || why === "reachesWarning" ? "warning" : "minimum";
  return trend.forecasts.find((f) => f.which === wanted) ?? trend.forecasts[0];
}

function riskOf({ trend, minimumN, nextRoundMs }: FleetEntry): number | undefined {
  const last = trend.segments.at(-1);
  if (last === undefined || minimumN === undefined || nextRoundMs === undefined) return undefined;
  const { axis, points } = trend;
  const lastMs = points.at(-1)!.atMs;
  const days = Math.max(0, nextRoundMs - lastMs) / 86_400_000; // overdue: as it stands now
  if (axis.kind === "counter" && axis.perDay === undefined) return undefined;
  const ahead = axis.kind === "date" ? days : days * axis.perDay!;
  return chanceBelow(last, minimumN, last.lastX + ahead, trend.sharedUncertaintyN);
}

/** Last force over the minimum. */
function marginOf({ trend, minimumN }: FleetEntry): number | undefined {
  const last = trend.points.at(-1);
  return last === undefined || minimumN === undefined ? undefined : last.valueN / minimumN;
}

/** Ascending, what is not known last. */
function compare(a: number | undefined, b: number | undefined): number {
  if (a === b) return 0;
  if (a === undefined) return 1;
  return b === undefined ? -1 : a - b;
}
