import { ascendingOrder } from "./ascendingOrder.ts";
import { countInversions } from "./countInversions.ts";
import { taken } from "./taken.ts";

/** How often values repeat: sums over groups of t equal values. */
export type TieSums = {
  /** Sizes of the groups with two and more. */
  readonly sizes: readonly number[];
  /** Sum of t(t - 1)/2: pairs that are no pair. */
  readonly pairs: number;
};

export type KendallCounts = {
  readonly n: number;
  /** Concordant less discordant pairs. */
  readonly s: number;
  /** n(n - 1)/2. */
  readonly pairs: number;
  readonly tiesX: TieSums;
  readonly tiesY: TieSums;
  /** Pairs tied in x and y at once. */
  readonly tiedInBoth: number;
};

/**
 * Kendall's S and the ties that go with it, in n log n steps: discordant pairs are the inversions of y once the
 * pairs stand in the order of x (and of y within equal x).
 * @param x  each finite; any order
 * @param y  as many as `x`, each finite
 * @throws RangeError  lengths differ, no value, or one that is not finite
 * @see W. R. Knight, JASA 61 (1966) 436
 */
export function kendallCounts(x: ArrayLike<number>, y: ArrayLike<number>): KendallCounts {
  const n = x.length;
  if (n < 1 || y.length !== n) throw new RangeError(`kendallCounts requires as many y as x, got ${n} and ${y.length}`);
  for (let i = 0; i < n; i += 1) {
    if (!Number.isFinite(x[i]! + y[i]!)) throw new RangeError("kendallCounts requires finite values");
  }
  const order = ascendingOrder(x, ascendingOrder(y));
  const xs = taken(x, order);
  const ys = taken(y, order);
  const tiesX = tieSums(xs);
  const tiedInBoth = tieSums(xs, ys).pairs;
  const discordant = countInversions(ys); // and sorts ys
  const tiesY = tieSums(ys);
  const pairs = (n * (n - 1)) / 2;
  const s = pairs - tiesX.pairs - tiesY.pairs + tiedInBoth - 2 * discordant;
  return { n, s, pairs, tiesX, tiesY, tiedInBoth };
}

/** Groups of neighbours that are equal, in both arrays where there are two. */
function tieSums(sorted: Float64Array, second = sorted): TieSums {
  const sizes: number[] = [];
  let pairs = 0;
  let start = 0;
  for (let i = 1; i <= sorted.length; i += 1) {
    if (i < sorted.length && sorted[i] === sorted[start] && second[i] === second[start]) continue;
    const size = i - start;
    if (size > 1) sizes.push(size);
    pairs += (size * (size - 1)) / 2;
    start = i;
  }
  return { sizes, pairs };
}
