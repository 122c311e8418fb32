import type { SlopeOrder } from "./SlopeOrder.ts";
import { taken, takenWhole } from "./taken.ts";

/**
 * Slopes of pairs between two trial slopes, each pair as likely as the next, in no order. Such a pair swaps sides
 * between the two orders, so its points stand no farther apart than points move: pairs are drawn from that
 * neighbourhood, and those outside the bracket thrown away. The draws start at the same seed each time.
 * @param xs  ascending; `ys` belongs to it
 * @param most  how many slopes are wanted; fewer come where few pairs fit
 * @see G. Marsaglia, Xorshift RNGs, Journal of Statistical Software 8 (14), 2003
 */
export function slopeSample(
  xs: Float64Array,
  ys: Float64Array,
  low: SlopeOrder,
  high: SlopeOrder,
  most: number,
): Float64Array {
  const n = xs.length;
  const window = Math.max(1, Math.min(n - 1, farthestSwap(low, high)));
  // Copies in the order of `low`: a pair's two points then stand close together in memory too.
  const lowPlace = takenWhole(low.place, low.order);
  const highPlace = takenWhole(high.place, low.order);
  const x = taken(xs, low.order);
  const y = taken(ys, low.order);
  // All points in turn, in many rounds, so that the draws may end anywhere.
  const stride = [61, 59, 53].find((step) => n % step !== 0) ?? 1;
  const kept = new Float64Array(most);
  let count = 0;
  let seed = 0x9e3779b9;
  for (let draw = 0, at = 0; draw < 20 * most && count < most; draw += 1) {
    seed ^= seed << 13;
    seed ^= seed >>> 17;
    seed ^= seed << 5;
    const after = at + 1 + Math.floor(((seed >>> 0) / 2 ** 32) * window);
    if (after < n && lowPlace[at]! < lowPlace[after]! && highPlace[at]! > highPlace[after]!) {
      kept[count++] = (y[after]! - y[at]!) / (x[after]! - x[at]!);
    }
    at = (at + stride) % n;
  }
  return kept.subarray(0, count);
}

/** No pair that changes order stands farther apart in the first order than this. */
function farthestSwap(first: SlopeOrder, second: SlopeOrder): number {
  let up = 0;
  let down = 0;
  for (let i = 0; i < first.position.length; i += 1) {
    const moved = first.position[i]! - second.position[i]!;
    if (moved > up) up = moved;
    else if (-moved > down) down = -moved;
  }
  return up + down;
}
