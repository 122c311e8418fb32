import type { Ground } from "./Ground.ts";
import type { HoldBounds } from "./holdBounds.ts";
import { secondsOf } from "./settledWindow.ts";

/** The readings of a window; they live until the next window is taken. */
export type WindowReadings = {
  /** Indices in the trace. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Since the arrival; undefined when times are unknown, or too few to tell a trend. */
  readonly seconds: Float64Array | undefined;
};

/** Used again for each window: memory for 20,000 readings, new for each cycle, costs more than reading them. */
let kept = [new Float64Array(0), new Float64Array(0), new Float64Array(0), new Float64Array(0)];

/** Takes [from, to] out of the hold, places without a reading left out; undefined when none is left. */
export function windowReadings(g: Ground, hold: HoldBounds, from: number, to: number): WindowReadings | undefined {
  const size = Math.max(0, to - from + 1);
  if (kept[0]!.length < size) kept = kept.map(() => new Float64Array(2 * size));
  const [x, y, seconds] = kept as [Float64Array, Float64Array, Float64Array];
  let n = 0;
  for (let i = from; i <= to; i += 1) {
    const v = g.w[i]!;
    if (Number.isNaN(v)) continue;
    x[n] = i;
    y[n] = v;
    n += 1;
  }
  if (n === 0) return undefined;
  const timed = n >= 3 && fillSeconds(g, hold, x, seconds, n);
  return { x: x.subarray(0, n), y: y.subarray(0, n), seconds: timed ? seconds.subarray(0, n) : undefined };
}

/** The window lies before anything that was folded away, so that index over rate is time. */
function fillSeconds(g: Ground, hold: HoldBounds, x: Float64Array, seconds: Float64Array, n: number): boolean {
  const { times, rateHz } = g.trace;
  const early = secondsOf(g, hold.before);
  if (times !== undefined) for (let i = 0; i < n; i += 1) seconds[i] = early + times[x[i]!]! - times[hold.arrival]!;
  else if (rateHz !== undefined) for (let i = 0; i < n; i += 1) seconds[i] = early + (x[i]! - hold.arrival) / rateHz;
  else return false;
  return seconds[0]! > 0;
}

/** Logarithms at every eighth reading are enough: between them a straight line is right to a millionth. */
const stride = 8;

export function logOf(seconds: Float64Array): Float64Array {
  const n = seconds.length;
  const log = kept[3]!.subarray(0, n);
  if (n < 1024) {
    for (let i = 0; i < n; i += 1) log[i] = Math.log(seconds[i]!);
    return log;
  }
  let before = Math.log(seconds[0]!);
  for (let i = 0; i < n; i += stride) {
    const last = Math.min(i + stride, n - 1);
    const after = Math.log(seconds[last]!);
    const slope = last > i ? (after - before) / (last - i) : 0;
    for (let k = i; k < last; k += 1) log[k] = before + slope * (k - i);
    before = after;
  }
  log[n - 1] = Math.log(seconds[n - 1]!);
  return log;
}
