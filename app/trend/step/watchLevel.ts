import { mean } from "../../numerics/mean.ts";
import { sampleStdDev } from "../../numerics/sampleStdDev.ts";

export type LevelAlarm = {
  /** Positions from 0: the check that raised it, and the first one of the sum that did. */
  readonly at: number;
  readonly since: number;
  readonly direction: "down" | "up";
};

export type LevelWatch = {
  /** Mean and standard deviation of the baseline checks. */
  readonly center: number;
  readonly s: number;
  readonly alarm: LevelAlarm | undefined;
};

/** Checks the limits are taken from. */
export const BASELINE_CHECKS = 8;
/** In standard deviations of those checks: each check counts by what it is beyond k, the sum alarms beyond h. */
const K = 2;
const H = 4;

/**
 * Watches new checks against the first eight of a segment: a tabular CUSUM tuned for steps of five standard
 * deviations. Limits from eight checks are poor limits: a three-sigma chart drawn from them alarms on one
 * unchanged spindle in four within forty checks. With k = 2 and h = 4 it is about one in twenty-five, and a step of
 * five is found within three checks in nineteen of twenty (both simulated, see the bench).
 * @param values  in the order they came, each finite; strays taken out
 * @returns  undefined with no check beyond the baseline, or where the baseline shows no scatter
 */
export function watchLevel(values: Float64Array): LevelWatch | undefined {
  if (values.length <= BASELINE_CHECKS) return undefined;
  const baseline = values.subarray(0, BASELINE_CHECKS);
  const center = mean(baseline);
  const s = sampleStdDev(baseline);
  if (!(s > 0)) return undefined;
  const down = { sum: 0, since: 0 };
  const up = { sum: 0, since: 0 };
  for (let i = BASELINE_CHECKS; i < values.length; i += 1) {
    const z = (values[i]! - center) / s;
    add(up, z - K, i);
    add(down, -z - K, i);
    const direction = up.sum > H ? "up" : down.sum > H ? "down" : undefined;
    if (direction !== undefined) {
      const { since } = direction === "up" ? up : down;
      return { center, s, alarm: { at: i, since, direction } };
    }
  }
  return { center, s, alarm: undefined };
}

function add(side: { sum: number; since: number }, excess: number, at: number): void {
  if (side.sum === 0) side.since = at;
  side.sum = Math.max(0, side.sum + excess);
}
