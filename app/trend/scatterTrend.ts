import { median } from "../numerics/median.ts";
import { sampleFactors } from "./control/sampleFactors.ts";
import type { CheckPoint } from "./History.ts";
import { lateOverEarly } from "./lateOverEarly.ts";
import { mannKendall } from "./mannKendall.ts";

export type ScatterTrend = {
  /** Checks whose scatter from clamping to clamping is known. */
  readonly n: number;
  readonly direction: "rises" | "falls" | "none" | "cannotTell";
  /** Two-sided, of the Mann-Kendall test on s over the value. */
  readonly p: number;
  /** Median of the last third over median of the first third; undefined where that is as good as 0 or there are under six. */
  readonly ratio: number | undefined;
  /** The last check's s lies above what the ones before allow (limit B4 of a chart of s). */
  readonly lastAboveLimit: boolean;
};

/**
 * Whether the scatter inside the checks grows, which the mean does not show: a gripper running dry does that first.
 * @param points  of one stretch, in the order of time
 * @returns  undefined with fewer than two checks whose scatter is known
 * @see EPA 530/R-09-007 17.3.2 (the test); ASTM MNL 7 (2002) (B4)
 */
export function scatterTrend(points: readonly CheckPoint[]): ScatterTrend | undefined {
  const known = points.filter((p) => p.seriesSN !== undefined && p.valueN > 0);
  if (known.length < 2) return undefined;
  const shares = Float64Array.from(known, (p) => p.seriesSN! / p.valueN);
  const test = mannKendall(
    Float64Array.from(known, (p) => p.atMs),
    shares,
  );
  const cannot = test.leastP !== undefined && test.leastP > 0.05;
  return {
    n: known.length,
    direction: cannot ? "cannotTell" : test.p >= 0.05 ? "none" : test.s > 0 ? "rises" : "falls",
    p: test.p,
    ratio: lateOverEarly(shares),
    lastAboveLimit: isAboveLimit(shares, known.at(-1)!.seriesCount),
  };
}

function isAboveLimit(shares: Float64Array, clampings: number | undefined): boolean {
  const before = shares.subarray(0, -1);
  if (before.length < 5 || clampings === undefined || clampings < 2) return false;
  return shares.at(-1)! > sampleFactors(clampings).b4 * median(before);
}
