import { median } from "../../numerics/median.ts";
import { type Ground, readingsIn } from "./Ground.ts";
import { lineFit } from "./scatter.ts";
import { stretchMedian } from "./stretch.ts";

export type HoldBounds = {
  /** Net force of the hold, rough: good for thresholds. */
  readonly levelN: number;
  /** The force has arrived: the rise, in one step or two, is over. */
  readonly arrival: number;
  /** Readings by which it really came before that one: the force passes between two readings. Negative: later. */
  readonly before: number;
  /** Standard uncertainty of `before`, readings. */
  readonly beforeError: number;
  /** Last reading before the release begins. */
  readonly holdEnd: number;
};

/**
 * Where the hold of a clamping begins and ends.
 * @param released  false when the readings end inside the hold
 * @returns  undefined when no reading stays above the zero
 */
export function findHold(g: Ground, released: boolean): HoldBounds | undefined {
  const top = greatestLevel(g);
  if (!(top > 0)) return undefined;
  const holdEnd = released ? findHoldEnd(g, top) : lastReading(g, g.end);
  return { levelN: top, holdEnd, ...findArrival(g, top, holdEnd) };
}

/** Greatest net level that lasts for five blocks of 50 ms: rings and spikes average out in it. */
function greatestLevel(g: Ground): number {
  const size = readingsIn(g.trace, 0.05, 3);
  const levels: number[] = [];
  for (let i = g.onset; i < g.end; i += size) {
    const level = stretchMedian(g.shape, i, Math.min(i + size, g.end));
    if (!Number.isNaN(level)) levels.push(level);
  }
  const together = Math.max(1, Math.min(5, levels.length >> 1));
  let top = Number.NEGATIVE_INFINITY;
  for (let i = 0; i + together <= levels.length; i += 1) top = Math.max(top, median(levels.slice(i, i + together)));
  return top - g.zeroN;
}

/** From the last reading above half the force back to where the fall began. */
function findHoldEnd(g: Ground, top: number): number {
  const last = lastAbove(g, g.zeroN + 0.5 * top);
  const size = readingsIn(g.trace, 0.02, 3);
  const falling = Math.max(0.004 * top, (2.5 * g.sigmaN) / Math.sqrt(size), 1.01 * g.stepN);
  let to = last + 1;
  let level = stretchMedian(g.shape, Math.max(g.onset, to - size), to);
  while (to - 2 * size >= g.onset) {
    const before = stretchMedian(g.shape, to - 2 * size, to - size);
    if (!(before - level > falling)) break;
    to -= size;
    level = before;
  }
  const reference = stretchMedian(g.shape, Math.max(g.onset, to - 2 * size), to);
  const floor = reference - Math.max(4 * g.sigmaN, 1.5 * g.stepN, 0.004 * (reference - g.zeroN));
  for (let i = last; i > g.onset; i -= 1) if (g.shape[i]! >= floor) return i;
  return last;
}

/**
 * The first reading of the first plateau that reaches 90 % of the greatest level. A slow rise is followed to where its
 * slope breaks; a lower plateau before it is the first step of the rise.
 */
function findArrival(g: Ground, top: number, holdEnd: number): Arrival {
  const nearly = firstStaying(g, g.zeroN + 0.9 * top, holdEnd);
  let before = nearly;
  while (before > g.onset && !(g.shape[before]! < g.zeroN + 0.8 * top)) before -= 1;
  const size = Math.max(2, (nearly - before) >> 1);
  // A rise that went on as before would gain 5 % a chunk.
  const rising = Math.max(0.015 * top, (3 * g.sigmaN) / Math.sqrt(size), 1.01 * g.stepN);
  let from = nearly;
  let level = stretchMedian(g.shape, from, from + size);
  while (from + 2 * size <= holdEnd) {
    const next = stretchMedian(g.shape, from + size, from + 2 * size);
    if (!(next - level > rising)) break;
    from += size;
    level = next;
  }
  const near = Math.min(holdEnd + 1, from + readingsIn(g.trace, 0.25, 5));
  const plateau = stretchMedian(g.shape, from, near) - g.zeroN;
  const arrived = Math.min(0.97 * plateau, plateau - 2 * g.sigmaN);
  const arrival = Math.min(holdEnd, firstStaying(g, g.zeroN + arrived, near));
  return breakOfRamp(g, arrival, plateau) ?? between(g, arrival, plateau, arrived);
}

type Arrival = Pick<HoldBounds, "arrival" | "before" | "beforeError">;

/** A ramp is extended to the plateau: three hundredths of a slow tightening are a time to count. */
function breakOfRamp(g: Ground, arrival: number, plateau: number): Arrival | undefined {
  let from = arrival;
  while (from > g.onset && !(g.shape[from - 1]! - g.zeroN < 0.85 * plateau)) from -= 1;
  const middle = (from + arrival) >> 1;
  if (middle - from < 4) return undefined;
  const lower = lineThrough(g, from, middle);
  const upper = lineThrough(g, middle, arrival);
  // A lag bends into its plateau, a step of two rests before it: neither has a break to look for.
  if (!(lower.slope > 0) || !(upper.slope > 0.6 * lower.slope) || !(upper.slope < 1.7 * lower.slope)) return undefined;
  const line = lineThrough(g, from, arrival);
  const late = line.meanX + (plateau - line.meanY) / line.slope - arrival;
  return { arrival, before: -Math.min(arrival - from, Math.max(0, late)), beforeError: 0.03 * (arrival - from) };
}

function lineThrough(g: Ground, from: number, to: number): { slope: number; meanX: number; meanY: number } {
  const x: number[] = [];
  const y: number[] = [];
  for (let i = from; i <= to; i += 1) {
    if (Number.isNaN(g.shape[i]!)) continue;
    x.push(i);
    y.push(g.shape[i]! - g.zeroN);
  }
  return lineFit(Float64Array.from(x), Float64Array.from(y));
}

/** Between the last reading under the plateau and the first on it; half-way when the rise fell between the two. */
function between(g: Ground, arrival: number, plateau: number, arrived: number): Arrival {
  const last = g.shape[arrival - 1]! - g.zeroN;
  const first = g.shape[arrival]! - g.zeroN;
  const leap = first - last;
  // What counts as arrived is a matter of a tenth of the rise.
  let low = arrival;
  while (low > g.onset && !(g.shape[low]! - g.zeroN < 0.7 * plateau)) low -= 1;
  const beforeError = Math.max(0.29, 0.1 * (arrival - low));
  if (!(leap > 0)) return { arrival, before: 0, beforeError };
  if (leap > 0.15 * plateau) return { arrival, before: 0.5, beforeError };
  return { arrival, before: Math.min(1, Math.max(0, (first - arrived) / leap)), beforeError };
}

/** First reading at or above `level` whose next one is near it too: not a spike on the way. `before` when there is none. */
function firstStaying(g: Ground, level: number, before: number): number {
  const lower = g.zeroN + 0.9 * (level - g.zeroN);
  for (let i = g.onset; i < before; i += 1) {
    if (!(g.shape[i]! >= level)) continue;
    let next = i + 1;
    while (next < g.end && Number.isNaN(g.shape[next]!)) next += 1;
    if (next >= g.end || g.shape[next]! >= lower) return i;
  }
  return before;
}

function lastAbove(g: Ground, level: number): number {
  for (let i = g.end - 1; i > g.onset; i -= 1) if (g.shape[i]! > level) return i;
  return g.onset;
}

function lastReading(g: Ground, before: number): number {
  for (let i = before - 1; i > g.onset; i -= 1) if (!Number.isNaN(g.shape[i]!)) return i;
  return g.onset;
}
