import type { CheckPoint, History, ServiceMark } from "../../app/trend/History.ts";
import type { Limits } from "../../app/verdict/Judgement.ts";

export const DAY_MS = 86_400_000;
/** First check of made-up histories: 2031-01-10. */
export const FIRST_MS = Date.UTC(2031, 0, 10);

/** A made-up history with a check every ninety days; `more` adds to each check. */
export function spindleHistory(
  values: readonly number[],
  more: {
    readonly spindleId?: string;
    readonly limits?: Limits;
    readonly events?: readonly ServiceMark[];
    readonly check?: (i: number) => Partial<CheckPoint>;
    readonly everyDays?: number;
  } = {},
): History {
  const { spindleId = "spindle-1", limits = {}, events = [], check = () => ({}), everyDays = 90 } = more;
  const points = values.map((valueN, i) => ({
    checkId: `${spindleId}-check-${i + 1}`,
    atMs: FIRST_MS + i * everyDays * DAY_MS,
    valueN,
    verdict: "good" as const,
    gaugeId: "gauge-1",
    adapterId: "adapter-1",
    ...check(i),
  }));
  return { spindleId, points, events, limits };
}

/** Noise without randomness: a fixed row of about normal figures with unit spread, used round and round. */
export const ripple = Object.freeze([
  0.4, -0.9, 1.2, -0.3, 0.1, -1.4, 0.8, 0.6, -0.7, 1.5, -0.2, -1.1, 0.3, 0.9, -0.5, -0.8, 1.0, 0.2, -1.6, 0.7, -0.1,
  1.3, -0.6, -1.0, 0.5,
]);

/** Such noise about a course. */
export const rippled = (n: number, sizeN: number, course: (i: number) => number): number[] =>
  Array.from({ length: n }, (_, i) => course(i) + sizeN * ripple[i % ripple.length]!);
