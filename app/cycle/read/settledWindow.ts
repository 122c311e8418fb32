import type { Ground } from "./Ground.ts";
import type { HoldBounds } from "./holdBounds.ts";

const windowFromS = 1;
const windowToS = 3;
/** Readings that make a window of a short hold. */
export const enough = 8;

/** Overload in a fifth of the readings from the arrival to the window's end: what the others show is chance. */
export function settledIsHidden(g: Ground, { arrival, holdEnd }: HoldBounds): boolean {
  if (g.over === undefined) return false;
  const to = g.trace.timed ? Math.min(holdEnd + 1, g.trace.indexAfter(arrival, windowToS)) : holdEnd + 1;
  const from =
    g.trace.timed && to > g.trace.indexAfter(arrival, windowFromS) + enough
      ? g.trace.indexAfter(arrival, windowFromS)
      : arrival;
  let over = 0;
  for (let i = from; i < to; i += 1) over += g.over[i]!;
  return over > 0.2 * (to - from);
}

/** First and last index of the readings to take, and whether they are the steady end of too short a hold. */
export function settledStretch(g: Ground, hold: HoldBounds): { from: number; to: number; short: boolean } {
  const { arrival, holdEnd } = hold;
  if (!g.trace.timed) return { from: arrival + Math.floor((holdEnd - arrival) / 3), to: holdEnd, short: false };
  // The force arrived so much before (after) the reading that showed it.
  const earlyS = secondsOf(g, hold.before);
  const from = g.trace.indexAfter(arrival, windowFromS - earlyS);
  const past = g.trace.indexAfter(arrival, windowToS - earlyS);
  const lasts = past <= holdEnd;
  const to = lasts ? lastAtOrBefore(g, past, arrival, earlyS) : holdEnd;
  if (count(g, from, to) >= (lasts ? 3 : enough)) return { from, to, short: false };
  let start = arrival + Math.ceil((holdEnd - arrival) / 2);
  while (start > arrival && count(g, start, holdEnd) < enough) start -= 1;
  return { from: start, to: holdEnd, short: true };
}

/** `past` itself when it stands just at 3 s, else the one before. */
function lastAtOrBefore(g: Ground, past: number, arrival: number, earlyS: number): number {
  return g.trace.secondsBetween(arrival, past) <= windowToS - earlyS + 1e-6 ? past : past - 1;
}

/** Readings as seconds; 0 where the rate is unknown. */
export function secondsOf(g: Ground, readings: number): number {
  return g.trace.rateHz === undefined ? 0 : readings / g.trace.rateHz;
}

function count(g: Ground, from: number, to: number): number {
  let n = 0;
  for (let i = from; i <= to; i += 1) if (!Number.isNaN(g.w[i]!)) n += 1;
  return n;
}
