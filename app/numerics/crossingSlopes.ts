import { ascendingOrder } from "./ascendingOrder.ts";
import type { SlopeOrder } from "./SlopeOrder.ts";
import { taken, takenWhole } from "./taken.ts";

/**
 * Slopes of the pairs that stand one way round under one trial slope and the other way round under the next: those
 * between the two. Found by an insertion sort, each of whose moves is such a pair, so that the time grows with the
 * points and the pairs found, no faster.
 * @param xs  ascending; `ys` belongs to it
 * @param low  the points by the lower trial slope
 * @param high  the same points by the upper one
 * @param expected  about how many slopes there are; more are taken too
 * @returns  the slopes, in no order
 */
export function crossingSlopes(
  xs: Float64Array,
  ys: Float64Array,
  low: SlopeOrder,
  high: SlopeOrder,
  expected: number,
): Float64Array {
  const order = byBoth(low, high);
  // Copies in the order of the sort: its inner loop then reads neighbours only, which the cache holds.
  return sortAndCollect(takenWhole(high.place, order), taken(xs, order), taken(ys, order), expected);
}

function sortAndCollect(place: Uint32Array, x: Float64Array, y: Float64Array, expected: number): Float64Array {
  let slopes = new Float64Array(expected + place.length);
  let count = 0;
  for (let k = 1; k < place.length; k += 1) {
    const p = place[k]!;
    if (place[k - 1]! <= p) continue;
    if (count + k > slopes.length) slopes = grown(slopes, count + k);
    const px = x[k]!;
    const py = y[k]!;
    let at = k - 1;
    for (; at >= 0 && place[at]! > p; at -= 1) {
      const passedX = x[at]!;
      const passedY = y[at]!;
      slopes[count++] = (py - passedY) / (px - passedX);
      place[at + 1] = place[at]!;
      x[at + 1] = passedX;
      y[at + 1] = passedY;
    }
    place[at + 1] = p;
    x[at + 1] = px;
    y[at + 1] = py;
  }
  return slopes.subarray(0, count);
}

/** Points by their place in the first order, those that share one by their place in the second: they do not cross. */
function byBoth(first: SlopeOrder, second: SlopeOrder): Uint32Array {
  const n = first.order.length;
  const order = first.order.slice();
  const { place } = first;
  for (let from = 0, to = 1; from < n; from = to, to = from + 1) {
    while (to < n && place[order[to]!] === from) to += 1;
    if (to - from > 1)
      order.set(
        taken(first.order.subarray(from, to), ascendingOrder(takenWhole(second.place, first.order.subarray(from, to)))),
        from,
      );
  }
  return order;
}

function grown(slopes: Float64Array, needed: number): Float64Array<ArrayBuffer> {
  const wider = new Float64Array(Math.max(needed, 2 * slopes.length));
  wider.set(slopes);
  return wider;
}
