import { median } from "../numerics/median.ts";

/** Shares of the force below this are nothing a gauge shows: a ratio to them says only how the rounding fell. */
const LEAST_SHARE = 1e-6;

/**
 * How many times as great a share of the force has become: median of the last third over median of the first.
 * @param shares  not negative, in the order of time
 * @returns  undefined with fewer than six, or where the first third is as good as nothing
 */
export function lateOverEarly(shares: Float64Array): number | undefined {
  const third = Math.floor(shares.length / 3);
  if (third < 2) return undefined;
  const early = median(shares.subarray(0, third));
  return early < LEAST_SHARE ? undefined : median(shares.subarray(shares.length - third)) / early;
}
