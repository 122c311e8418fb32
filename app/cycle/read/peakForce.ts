import { type Ground, readingsIn } from "./Ground.ts";

export type Peak = { readonly indication: number; readonly index: number };

/**
 * The greatest force of a cycle, spikes already taken out. An overshoot that stands clear of the noise is a crest: a
 * parabola through its top, fitted by least squares over as many readings on both sides as lie in its upper third,
 * gives the maximum between the samples without the noise of the highest one. Without such an overshoot the highest
 * reading is only the luckiest one; the greatest mean of a short run of readings stands for it.
 * @param levelN  indication the hold stands at
 * @returns  undefined when there is no reading
 */
export function peakForce(g: Ground, levelN: number): Peak | undefined {
  const at = greatest(g.w, g.onset, g.end);
  if (at < 0) return undefined;
  // What overload still let be seen is a lower bound: nothing is to be made of it.
  if (g.over !== undefined) return { indication: g.w[at]!, index: at };
  const overshoot = g.w[at]! - levelN;
  if (overshoot > 6 * g.sigmaN + 2 * g.stepN) return crest(g.w, at, g.onset, g.end, overshoot);
  return greatestRun(g) ?? { indication: g.w[at]!, index: at };
}

function greatest(w: Float64Array, from: number, to: number): number {
  let at = -1;
  let top = Number.NEGATIVE_INFINITY;
  for (let i = from; i < to; i += 1) {
    if (w[i]! > top) {
      top = w[i]!;
      at = i;
    }
  }
  return at;
}

/** Widest side of a crest that is fitted; wider ones gain nothing. */
const widestSide = 60;

function crest(w: Float64Array, at: number, from: number, to: number, overshoot: number): Peak {
  const floor = w[at]! - 0.3 * overshoot;
  let side = 1;
  while (
    side < widestSide &&
    at - side - 1 >= from &&
    at + side + 1 < to &&
    w[at - side - 1]! > floor &&
    w[at + side + 1]! > floor
  )
    side += 1;
  const fitted = parabolaTop(w, at, side);
  if (fitted === undefined) return { indication: w[at]!, index: at };
  // At sixteen readings a period a crest loses a fiftieth of the overshoot between them: beyond, the shape is a corner.
  const gain = Math.min(fitted - w[at]!, 0.025 * overshoot);
  return { indication: side === 1 ? w[at]! + Math.max(0, gain) : w[at]! + gain, index: at };
}

/** Top of the least-squares parabola through at - side .. at + side; undefined where it has none there. */
function parabolaTop(w: Float64Array, at: number, side: number): number | undefined {
  let s0 = 0;
  let s1 = 0;
  let s2 = 0;
  let n = 0;
  let x2 = 0;
  let x4 = 0;
  for (let k = -side; k <= side; k += 1) {
    const v = w[at + k]! - w[at]!;
    if (Number.isNaN(v)) return undefined;
    s0 += v;
    s1 += k * v;
    s2 += k * k * v;
    n += 1;
    x2 += k * k;
    x4 += k ** 4;
  }
  const slope = s1 / x2;
  const bend = (n * s2 - x2 * s0) / (n * x4 - x2 * x2);
  const base = (s0 - bend * x2) / n;
  if (!(bend < 0)) return undefined;
  const top = -slope / (2 * bend);
  return Math.abs(top) > side ? undefined : w[at]! + base - (slope * slope) / (4 * bend);
}

/** Greatest mean of `length` readings in a row, moved by a quarter of it at a time. */
function greatestRun(g: Ground): Peak | undefined {
  const { w, onset, end } = g;
  const quarter = Math.max(1, Math.min(33, readingsIn(g.trace, 0.02, 9), (end - onset) >> 2) >> 2);
  // Sums and counts of the last four quarters.
  const sums = [0, 0, 0, 0];
  const counts = [0, 0, 0, 0];
  let top = Number.NEGATIVE_INFINITY;
  let at = -1;
  for (let from = onset, k = 0; from < end; from += quarter, k += 1) {
    let sum = 0;
    let n = 0;
    const to = Math.min(from + quarter, end);
    for (let i = from; i < to; i += 1) {
      const v = w[i]!;
      if (Number.isNaN(v)) continue;
      sum += v;
      n += 1;
    }
    sums[k & 3] = sum;
    counts[k & 3] = n;
    const readings = counts[0]! + counts[1]! + counts[2]! + counts[3]!;
    if (k < 3 || readings < 2 * quarter) continue;
    const mean = (sums[0]! + sums[1]! + sums[2]! + sums[3]!) / readings;
    if (mean <= top) continue;
    top = mean;
    at = from - quarter;
  }
  return at < 0 ? undefined : { indication: top, index: at };
}
