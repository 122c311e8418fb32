import { median } from "../../numerics/median.ts";
import { turningPoints } from "../../numerics/turningPoints.ts";
import { type Ground, readingsIn } from "./Ground.ts";

export type RingPeriod = { readonly readings: number; readonly sure: boolean };

const unseen: RingPeriod = { readings: Number.POSITIVE_INFINITY, sure: false };

/**
 * Period of the ring after the force has arrived, in readings: spacing of crests, and of troughs, that stand clear of
 * the noise and of 1 % of the force. With one crest and one trough it is twice their distance, with one crest alone
 * twice the time it stands above the hold.
 * @returns  Infinity when nothing rings visibly; `sure` when it was seen to swing back
 */
export function ringPeriod(g: Ground, arrival: number, holdEnd: number, levelN: number): RingPeriod {
  const until = Math.min(holdEnd, arrival + readingsIn(g.trace, 1, 100));
  const least = Math.max(9 * g.sigmaN, 2.2 * g.stepN, 0.01 * levelN);
  const turns = turningPoints(g.w, arrival, until + 1, least).map(
    (at) => at + vertex(g.w[at - 1]!, g.w[at]!, g.w[at + 1]!),
  );
  if (turns.length === 0) return unseen;
  if (turns.length === 1) return { readings: crestPeriod(g, arrival, holdEnd, turns[0]!, levelN), sure: false };
  if (turns.length === 2) return { readings: 2 * (turns[1]! - turns[0]!), sure: true };
  return { readings: median(turns.slice(2).map((at, i) => at - turns[i]!)), sure: true };
}

/** A step response of the second order passes its level at every half period. */
function crestPeriod(g: Ground, arrival: number, holdEnd: number, crest: number, levelN: number): number {
  const level = g.zeroN + levelN;
  let from = Math.round(crest);
  while (from > arrival - 3 && from > g.onset && !(g.w[from]! <= level)) from -= 1;
  let to = Math.round(crest);
  while (to < holdEnd && !(g.w[to]! <= level)) to += 1;
  const past = (i: number) => (level - g.w[i]!) / (g.w[i + 1]! - g.w[i]!);
  const width = to - 1 + past(to - 1) - (from + past(from));
  return width > 0 && width < readingsIn(g.trace, 0.25, 20) ? 2 * width : Number.POSITIVE_INFINITY;
}

/** Where the parabola through three readings turns, from the middle one. */
function vertex(before: number, top: number, after: number): number {
  const bend = before - 2 * top + after;
  const shift = (before - after) / (2 * bend);
  return Math.abs(shift) <= 0.5 ? shift : 0; // also 0 for NaN: a neighbour is missing
}

/**
 * First reading after which the swing within 60 ms (three readings at least) is that of the noise, or `share` of the
 * force.
 * @returns  `to` when it rings until there
 */
export function ringEnd(g: Ground, arrival: number, to: number, levelN: number, share: number): number {
  const width = readingsIn(g.trace, 0.06, 3);
  const quiet = Math.max(share * levelN, 8 * g.sigmaN, 2.2 * g.stepN);
  for (let from = arrival; from < to; from += Math.max(1, width >> 1)) {
    let least = Number.POSITIVE_INFINITY;
    let most = Number.NEGATIVE_INFINITY;
    for (let i = from; i < from + width && i < g.end; i += 1) {
      if (g.w[i]! < least) least = g.w[i]!;
      if (g.w[i]! > most) most = g.w[i]!;
    }
    if (most - least <= quiet) return from;
  }
  return to;
}
