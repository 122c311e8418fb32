import { ascendingOrder } from "./ascendingOrder.ts";

/**
 * The points in the order of y - slope x: a pair with x_i < x_j has a slope under the trial slope when j stands
 * before i. Points closer than rounding share a place: what is tied in the data must be tied here, whatever the
 * product rounded to.
 */
export class SlopeOrder {
  readonly slope: number;
  /** Points by place, those that share one by x. */
  readonly order: Uint32Array;
  /** For each point, the first position of those it shares a place with. */
  readonly place: Uint32Array;
  /** For each point, its position in `order`. */
  readonly position: Uint32Array;
  /** Pairs of different x that share a place. */
  readonly tied: number;

  /**
   * @param xs  ascending
   * @param slope  the infinities stand for the order of x, forwards and backwards, with equal x by y
   */
  constructor(xs: Float64Array, ys: Float64Array, slope: number) {
    this.slope = slope;
    const n = xs.length;
    this.place = new Uint32Array(n);
    this.position = new Uint32Array(n);
    if (Number.isFinite(slope)) {
      const rest = residuals(xs, ys, slope);
      const closest = tolerance(xs, ys, slope);
      this.order = ascendingOrder(rest);
      this.tied = this.#settle(xs, (i, before) => rest[i]! - rest[before]! <= closest);
    } else {
      this.order = orderOfX(xs, ys, slope < 0);
      this.tied = this.#settle(xs, (i, before) => xs[i] === xs[before] && ys[i] === ys[before]);
    }
  }

  /** Sets places and positions, and counts the ties. */
  #settle(xs: Float64Array, isTied: (i: number, before: number) => boolean): number {
    const { order, place, position } = this;
    const n = order.length;
    let tied = 0;
    for (let from = 0, to = 1; from < n; from = to, to = from + 1) {
      while (to < n && isTied(order[to]!, order[to - 1]!)) to += 1;
      if (to - from > 1) {
        order.subarray(from, to).sort();
        tied += ((to - from) * (to - from - 1)) / 2 - pairsOfOneX(xs, order, from, to);
      }
      for (let k = from; k < to; k += 1) {
        place[order[k]!] = from;
        position[order[k]!] = k;
      }
    }
    return tied;
  }
}

function pairsOfOneX(xs: Float64Array, order: Uint32Array, from: number, to: number): number {
  let pairs = 0;
  for (let k = from + 1, run = 0; k < to; k += 1) {
    run = xs[order[k]!] === xs[order[k - 1]!] ? run + 1 : 0;
    pairs += run;
  }
  return pairs;
}

/** Forwards or backwards, equal x by y. */
function orderOfX(xs: Float64Array, ys: Float64Array, forwards: boolean): Uint32Array {
  const n = xs.length;
  const order = new Uint32Array(n);
  for (let k = 0; k < n; k += 1) order[k] = forwards ? k : n - 1 - k;
  let distinct = true;
  for (let i = 1; i < n && distinct; i += 1) distinct = xs[i]! > xs[i - 1]!;
  if (distinct) return order;
  const key = xs.map((x) => (forwards ? x : -x));
  return ascendingOrder(key, ascendingOrder(ys));
}

/** About a point in the middle: large common offsets (milliseconds since 1970) would cost the digits. */
function residuals(xs: Float64Array, ys: Float64Array, slope: number): Float64Array {
  const n = xs.length;
  const x0 = xs[n >> 1]!;
  const y0 = ys[n >> 1]!;
  const rest = new Float64Array(n);
  for (let i = 0; i < n; i += 1) rest[i] = ys[i]! - y0 - slope * (xs[i]! - x0);
  return rest;
}

function tolerance(xs: Float64Array, ys: Float64Array, slope: number): number {
  let scale = 0;
  for (let i = 0; i < ys.length; i += 1) scale = Math.max(scale, Math.abs(ys[i]!));
  return 4 * Number.EPSILON * (scale + Math.abs(slope) * (xs[xs.length - 1]! - xs[0]!));
}
