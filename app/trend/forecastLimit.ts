import { normalQuantile } from "../numerics/normalQuantile.ts";
import { studentQuantile } from "../numerics/studentQuantile.ts";
import type { StretchFit } from "./fitStretch.ts";
import type { LeastSquaresLine } from "./leastSquaresLine.ts";
import { bandHalf, type ReachOptions, reachInterval } from "./reachInterval.ts";

export type ForecastState = "crosses" | "already" | "notWithinTenYears" | "cannotTell";

export type Forecast = {
  readonly limit: number;
  readonly state: ForecastState;
  /** Where the robust line reaches the limit, and the interval of that place, in x; undefined where it never does (or, with `already`, did). */
  readonly at: number | undefined;
  readonly low: number | undefined;
  /** Undefined, with `low` given: the interval has no end. */
  readonly high: number | undefined;
  readonly confidence: number;
  /** `at` lies farther past the last check than three times the span the line was seen over. */
  readonly beyondThreeSpans: boolean;
};

export type ForecastOptions = {
  /** Two-sided, of the interval. */
  readonly confidence?: number;
  /** x ten years after the last check. */
  readonly horizon: number;
  /** Standard uncertainty that all checks share, in the unit of y. */
  readonly shared?: number;
};

/** Fewer points than this draw no line that could be trusted with a date. */
export const FORECAST_CHECKS = 4;

/**
 * When a falling spindle reaches a lower limit. `at` is where the robust line does; the interval is Fieller's
 * inverse prediction from the least-squares yardstick (strays out, memory between neighbours and shared uncertainty
 * in), stretched where needed to hold `at`. "already": the line stands at or under the limit, or the last
 * check clearly does.
 * "notWithinTenYears": the line reaches it later, or rises, or falls so little that even the band's steep edge needs
 * longer. "cannotTell": too few checks, or a slope that chance alone could give and that might get there in time.
 */
export function forecastLimit(fit: StretchFit, limit: number, options: ForecastOptions): Forecast {
  const { confidence = 0.9, horizon } = options;
  const none = { limit, at: undefined, low: undefined, high: undefined, confidence, beyondThreeSpans: false };
  const there = isThere(fit, limit) ? "already" : undefined;
  const { line, yardstick, lastX } = fit;
  const reach = fit.n < FORECAST_CHECKS ? undefined : reachOptions(fit, options);
  if (line === undefined || yardstick === undefined || reach === undefined)
    return { ...none, state: there ?? "cannotTell" };
  const interval = reachInterval(yardstick, limit, reach);
  if (interval !== undefined && yardstick.slope < 0 && line.slope < 0) {
    const at = lastX + (limit - line.intercept - line.slope * lastX) / line.slope;
    const low = Math.min(at, interval.low);
    const high = Math.max(at, interval.high);
    const beyondThreeSpans = at - lastX > 3 * (lastX - fit.firstX);
    const state = there ?? (at <= horizon ? "crosses" : "notWithinTenYears");
    return { limit, state, at, low, high, confidence, beyondThreeSpans };
  }
  if (there !== undefined) return { ...none, state: there };
  const rises = interval !== undefined && yardstick.slope > 0;
  const low = rises ? undefined : firstTouch(fit, yardstick, limit, horizon, reach);
  return { ...none, low, state: low === undefined ? "notWithinTenYears" : "cannotTell" };
}

function isThere({ n, line, lastX, lastY, scatter }: StretchFit, limit: number): boolean {
  if (n < FORECAST_CHECKS || line === undefined) return lastY <= limit;
  // A last check under the limit by less than the scatter, on a line above it, says no more than that the limit is near.
  return line.intercept + line.slope * lastX <= limit || lastY <= limit - scatter;
}

/** What widens band and forecast of this stretch; undefined where no scatter can be known. */
export function reachOptions(
  fit: StretchFit,
  { confidence = 0.9, shared = 0 }: Pick<ForecastOptions, "confidence" | "shared">,
): ReachOptions | undefined {
  const freedom = fit.yardstick?.degreesOfFreedom ?? 0;
  if (freedom < 1) return undefined;
  const upper = (1 + confidence) / 2;
  const { found, varianceFactor } = fit.memory;
  return {
    t: studentQuantile(upper, freedom),
    sharedHalf: shared > 0 ? normalQuantile(upper) * shared : 0,
    memory: found && fit.n >= 20 ? varianceFactor : 1,
  };
}

/** First x from the last check to the horizon at which the lower edge of the band has come down to the limit. */
function firstTouch(
  fit: StretchFit,
  line: LeastSquaresLine,
  limit: number,
  horizon: number,
  reach: ReachOptions,
): number | undefined {
  const lowEdge = (x: number) => line.meanY + line.slope * (x - line.meanX) - bandHalf(line, x, reach);
  let from = fit.lastX;
  let to = horizon;
  if (lowEdge(from) <= limit) return from;
  if (!(lowEdge(to) <= limit)) return undefined;
  for (let i = 0; i < 60; i += 1) {
    const middle = from + (to - from) / 2;
    if (lowEdge(middle) <= limit) to = middle;
    else from = middle;
  }
  return to;
}
