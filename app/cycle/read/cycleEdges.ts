import { type Ground, readingsIn } from "./Ground.ts";
import { lineFit } from "./scatter.ts";
import { stretchMedian } from "./stretch.ts";

/**
 * Where the force leaves its zero: the last reading within the noise before the rise. A slow rise creeps out of the
 * noise unseen; a straight line through its first part is led back to the zero.
 */
export function findOnset(g: Ground, levelN: number, arrival: number, isHeld: boolean): number {
  // A held maximum creeps up with the noise while nothing presses.
  const creep = isHeld ? 0.02 * levelN : 0;
  const out = Math.max(4 * g.sigmaN, 1.5 * g.stepN, creep);
  // The band of the detector is wider than the noise, and spikes may have opened the stretch early.
  const arrivedN = g.zeroN + levelN - g.baseN;
  const low = firstAbove(g, g.onset, arrival, g.baseN + Math.max(0.1 * arrivedN, out));
  const up = firstAbove(g, low, arrival, g.baseN + Math.max(0.3 * arrivedN, 2 * out));
  const few = Math.max(6, readingsIn(g.trace, 0.05, 1));
  const from = up - low < few ? driftedBase(g, low, arrivedN) : g.baseN;
  let at = low;
  while (at > g.first && !(g.shape[at - 1]! <= from + out)) at -= 1;
  return up - at >= few ? ledBack(g, arrivedN, out, at, arrival) : Math.max(0, at - 1);
}

/** First index from `from` whose reading lies above `level`; `to` when there is none. */
export function firstAbove(g: Ground, from: number, to: number, level: number): number {
  let i = from;
  while (i < to && !(g.shape[i]! > level)) i += 1;
  return i;
}

/** A zero that drifts out of its band opens the stretch before the rise: what stands right before that is its base. */
function driftedBase(g: Ground, low: number, arrivedN: number): number {
  const from = low - readingsIn(g.trace, 0.15, 8);
  if (from < g.onset) return g.baseN;
  const level = stretchMedian(g.shape, from, low - 2);
  return level > g.baseN && level < g.baseN + 0.08 * arrivedN ? level : g.baseN;
}

/** Intersection with the zero of the line through the readings from the noise to a fifth of the force. */
function ledBack(g: Ground, arrivedN: number, out: number, at: number, arrival: number): number {
  const top = g.baseN + Math.max(0.2 * arrivedN, 2 * out);
  let to = at;
  while (to < arrival && !(g.shape[to]! > top)) to += 1;
  const x: number[] = [];
  const y: number[] = [];
  for (let i = at; i <= to; i += 1) {
    if (Number.isNaN(g.shape[i]!)) continue;
    x.push(i);
    y.push(g.shape[i]! - g.baseN);
  }
  if (y.length < 3) return Math.max(0, at - 1);
  const line = lineFit(Float64Array.from(x), Float64Array.from(y));
  if (!(line.slope > 0)) return Math.max(0, at - 1);
  const back = Math.round(line.meanX - line.meanY / line.slope);
  // Never before the reading as far back as the rise had lasted: a bent start would lead anywhere.
  return Math.max(0, at - (to - at + 1), Math.min(at, back));
}

/** The first reading back at the level the force fell to: within the noise of it, or 1 % of the fall. */
export function findReturn(g: Ground, holdEnd: number, fellToN: number, levelAt: number): number {
  const limit = fellToN + Math.max(4 * g.sigmaN, 1.5 * g.stepN, 0.01 * (levelAt - fellToN));
  for (let i = holdEnd + 1; i < g.end; i += 1) {
    if (!(g.shape[i]! <= limit)) continue;
    const next = g.shape[i + 1];
    if (next === undefined || i + 1 >= g.end || Number.isNaN(next) || next <= limit) return i;
  }
  return Math.max(holdEnd, g.end - 1);
}
