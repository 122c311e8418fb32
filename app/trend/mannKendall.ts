import { ascendingOrder } from "../numerics/ascendingOrder.ts";
import { type KendallCounts, kendallCounts } from "../numerics/kendallCounts.ts";
import { kendallNull } from "../numerics/kendallNull.ts";
import { kendallVariance } from "../numerics/kendallVariance.ts";
import { normalCdf } from "../numerics/normalCdf.ts";

export type MannKendall = {
  readonly n: number;
  readonly s: number;
  readonly varS: number;
  /** With continuity correction; 0 where nothing can vary. */
  readonly z: number;
  /** Two-sided; exact up to ten values, from z above. */
  readonly p: number;
  readonly pNormal: number;
  readonly method: "exact" | "normal";
  /** The least p these n values and ties can give; above 0.05 the test can never reject at 5 %. Undefined above ten. */
  readonly leastP: number | undefined;
  /** S over all pairs; undefined with fewer than two values. */
  readonly tauA: number | undefined;
  /** S over the pairs not tied; undefined where all are. */
  readonly tauB: number | undefined;
};

/**
 * Mann-Kendall test for a trend: does y go one way as x grows. Ties in y and in x are corrected for. Up to ten
 * values the p-value is counted out over all orders, ties kept; above, the normal distribution with continuity
 * correction stands for it.
 * @param x  times or counts, each finite; any order
 * @param y  as many as `x`, each finite; one or more
 * @param counts  when they are known already
 * @throws RangeError  lengths differ, no value, or one that is not finite
 * @see EPA 530/R-09-007 17.3.2; M. G. Kendall, Rank Correlation Methods, 4th ed. (1970), 4 and 5
 */
export function mannKendall(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  counts: KendallCounts = kendallCounts(x, y),
): MannKendall {
  const { n, s, pairs, tiesX, tiesY } = counts;
  const varS = kendallVariance(counts);
  const z = varS > 0 ? (s - Math.sign(s)) / Math.sqrt(varS) : 0;
  const pNormal = Math.min(1, 2 * normalCdf(-Math.abs(z)));
  const exact = n <= EXACT_UP_TO ? exactP(x, y, s) : undefined;
  const untied = Math.sqrt((pairs - tiesX.pairs) * (pairs - tiesY.pairs));
  return {
    n,
    s,
    varS,
    z,
    p: exact?.p ?? pNormal,
    pNormal,
    method: exact === undefined ? "normal" : "exact",
    leastP: exact?.least,
    tauA: pairs > 0 ? s / pairs : undefined,
    tauB: untied > 0 ? s / untied : undefined,
  };
}

const EXACT_UP_TO = 10;

function exactP(x: ArrayLike<number>, y: ArrayLike<number>, s: number): { p: number; least: number } {
  const chances = kendallNull(groupSizes(x), groupSizes(y));
  let p = 0;
  let most = 0;
  for (const value of chances.keys()) most = Math.max(most, Math.abs(value));
  let least = 0;
  for (const [value, chance] of chances) {
    if (Math.abs(value) >= Math.abs(s)) p += chance;
    if (Math.abs(value) === most) least += chance;
  }
  return { p: Math.min(1, p), least };
}

/** How many values are equal, from the smallest up. */
function groupSizes(values: ArrayLike<number>): number[] {
  const order = ascendingOrder(values);
  const sizes: number[] = [];
  for (let k = 0; k < order.length; k += 1) {
    if (k > 0 && values[order[k]!] === values[order[k - 1]!]) sizes[sizes.length - 1]! += 1;
    else sizes.push(1);
  }
  return sizes;
}
