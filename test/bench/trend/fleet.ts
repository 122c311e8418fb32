import { commonModes } from "../../../app/trend/commonMode.ts";
import { courseOf } from "../../../app/trend/courseOf.ts";
import { rankFleet } from "../../../app/trend/rankFleet.ts";
import { trendOf } from "../../../app/trend/trendOf.ts";
import { worksOfSpindles } from "../../support/worksOfSpindles.ts";
import { SeededRandom } from "../judgement/SeededRandom.ts";
import { leastSeconds } from "./slopes.ts";

/** Least milliseconds for 2,000 spindles of 60 checks each: what moved together, courses and their ranking; and whole trends. */
export function fleetMilliseconds(seed: number): { common: number; ranked: number; trends: number } {
  const random = new SeededRandom(seed);
  const histories = worksOfSpindles(
    () => random.normal(),
    () => random.unit(),
    { spindles: 2000, checks: 60, gauges: 4, adapters: 6 },
  ).map((history, i) => ({
    ...history,
    limits: { minimumN: 0.8 * history.points[0]!.valueN, warningN: 0.88 * history.points[0]!.valueN },
    events: i % 3 === 0 ? [{ atMs: history.points[30]!.atMs - 1, kind: "lubricated" as const, newBaseline: true }] : [],
  }));
  const rank = () =>
    rankFleet(
      histories.map((history) => ({
        spindleId: history.spindleId,
        trend: courseOf(history),
        minimumN: history.limits.minimumN,
        verdict: "good" as const,
        stopped: false,
        nextRoundMs: history.points[59]!.atMs + 90 * 86_400_000,
      })),
    );
  const [common, ranked, trends] = leastSeconds(
    6,
    () => commonModes(histories),
    rank,
    () => histories.map((history) => trendOf(history)),
  );
  return { common: 1000 * common!, ranked: 1000 * ranked!, trends: 1000 * trends! };
}
