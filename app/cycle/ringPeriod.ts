import { median } from "../numerics/median.ts";
import { type Ground, readingsIn } from "./Ground.ts";

/**
 * Period of the ring after the force has arrived, in readings: spacing of crests, and of troughs, that stand clear of
 * the noise and of 1 % of the force. With one crest and one trough it is twice their distance.
 * @returns  undefined when nothing rings visibly
 */
export function ringPeriod(g: Ground, arrival: number, holdEnd: number, levelN: number): number | undefined {
  const until = Math.min(holdEnd, arrival + readingsIn(g.trace, 1, 100));
  const turns = turningPoints(g.w, arrival, until, Math.max(9 * g.sigmaN, 2.2 * g.stepN, 0.01 * levelN));
  if (turns.length < 2) return undefined;
  if (turns.length === 2) return 2 * (turns[1]! - turns[0]!);
  return median(turns.slice(2).map((at, i) => at - turns[i]!));
}

/** Where the readings turn by more than `least`, crest first, between the readings by the parabola through three. */
function turningPoints(w: Float64Array, from: number, to: number, least: number): number[] {
  const turns: number[] = [];
  let up = true;
  let extreme = from;
  for (let i = from + 1; i <= to; i += 1) {
    const v = w[i]!;
    if (Number.isNaN(v)) continue;
    const sign = up ? 1 : -1;
    if (!(sign * v <= sign * w[extreme]!)) extreme = i;
    else if (sign * (w[extreme]! - v) > least) {
      turns.push(extreme + between(w[extreme - 1]!, w[extreme]!, w[extreme + 1]!));
      up = !up;
      extreme = i;
    }
  }
  return turns;
}

function between(before: number, top: number, after: number): number {
  const bend = before - 2 * top + after;
  const shift = (before - after) / (2 * bend);
  return Math.abs(shift) <= 0.5 ? shift : 0; // also 0 for NaN: a neighbour is missing
}
