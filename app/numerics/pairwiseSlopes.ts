import { ascendingOrder } from "./ascendingOrder.ts";
import { SlopeSelection } from "./SlopeSelection.ts";
import { selectRanks } from "./selectRanks.ts";
import { taken } from "./taken.ts";

/**
 * Chosen order statistics of the slopes (y_j - y_i)/(x_j - x_i) over all pairs with different x, without making
 * the n(n - 1)/2 slopes when there are many: small samples are enumerated, large ones bracketed by counting
 * (`SlopeSelection`). Nothing is estimated: the answer is the slope of a pair, and exactly as many lie below it as
 * its rank says. Slopes that differ by rounding of the data only count as equal.
 * @param x  each finite; any order
 * @param y  as many as `x`, each finite
 * @param ranks  whole numbers from 1 (least slope) to the number of pairs with different x; any order
 * @returns  the slope of each rank, in the unit of y per unit of x
 * @throws RangeError  lengths differ, or a rank out of range
 * @see P. K. Sen, JASA 63 (1968) 1379; M. B. Dillencourt, D. M. Mount and N. S. Netanyahu, Int. J. Computational
 *      Geometry and Applications 2 (1992) 1, for counting and bracketing slopes
 */
export function pairwiseSlopes(x: ArrayLike<number>, y: ArrayLike<number>, ranks: readonly number[]): number[] {
  if (x.length !== y.length)
    throw new RangeError(`pairwiseSlopes requires as many y as x, got ${x.length} and ${y.length}`);
  const order = ascendingOrder(x);
  const xs = taken(x, order);
  const ys = taken(y, order);
  const nextX = groupEnds(xs);
  let pairs = 0;
  for (let i = 0; i < xs.length; i += 1) pairs += xs.length - nextX[i]!;
  for (const rank of ranks) {
    if (!(rank >= 1 && rank <= pairs)) throw new RangeError(`pairwiseSlopes has ranks 1 to ${pairs}, got ${rank}`);
  }
  if (pairs > ENUMERATED) return new SlopeSelection(xs, ys, nextX, pairs).select(ranks);
  const slopes = allSlopes(xs, ys, nextX, pairs);
  return selectRanks(slopes, ranks);
}

/** Up to here making every slope is the fastest way. */
const ENUMERATED = 200_000;

/** For each position of sorted x, the first position with a greater x. */
function groupEnds(xs: Float64Array): Uint32Array {
  const ends = new Uint32Array(xs.length);
  for (let i = xs.length - 1, end = xs.length; i >= 0; i -= 1) {
    if (i + 1 < xs.length && xs[i]! < xs[i + 1]!) end = i + 1;
    ends[i] = end;
  }
  return ends;
}

function allSlopes(xs: Float64Array, ys: Float64Array, nextX: Uint32Array, pairs: number): Float64Array {
  const slopes = new Float64Array(pairs);
  let k = 0;
  for (let i = 0; i < xs.length; i += 1) {
    const x0 = xs[i]!;
    const y0 = ys[i]!;
    for (let j = nextX[i]!; j < xs.length; j += 1) slopes[k++] = (ys[j]! - y0) / (xs[j]! - x0);
  }
  return slopes;
}
