import { ascendingOrder } from "./ascendingOrder.ts";

/**
 * The points in the order of y - slope x: a pair with x_i < x_j has a slope under the trial slope when j stands
 * before i. Points closer than rounding share a place: what is tied in the data must be tied here, whatever the
 * product rounded to.
 */
export class SlopeOrder {
  readonly slope: number;
  readonly order: Uint32Array;
  readonly place: Uint32Array;

  /**
   * @param xs  ascending
   * @param slope  the infinities stand for the order of x, forwards and backwards, with equal x by y
   */
  constructor(xs: Float64Array, ys: Float64Array, slope: number) {
    this.slope = slope;
    const n = xs.length;
    if (Number.isFinite(slope)) {
      const rest = residuals(xs, ys, slope);
      this.order = ascendingOrder(rest);
      this.place = places(this.order, rest, tolerance(xs, ys, slope));
    } else {
      this.order = orderOfX(xs, ys, slope < 0);
      this.place = new Uint32Array(n);
      for (let k = 1, place = 0; k < n; k += 1) {
        const [i, before] = [this.order[k]!, this.order[k - 1]!];
        if (xs[i] !== xs[before] || ys[i] !== ys[before]) place += 1;
        this.place[i] = place;
      }
    }
  }
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

function places(order: Uint32Array, rest: Float64Array, closest: number): Uint32Array {
  const place = new Uint32Array(order.length);
  for (let k = 1, at = 0; k < order.length; k += 1) {
    if (rest[order[k]!]! - rest[order[k - 1]!]! > closest) at += 1;
    place[order[k]!] = at;
  }
  return place;
}
