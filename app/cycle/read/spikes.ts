import { median } from "../../numerics/median.ts";

/**
 * Single readings that stand out of both neighbours farther than noise, a ring or a rise can carry one: wrong digits,
 * a disturbed line. Two together are no spike, and the crest of a ring of five and more readings a period is a peak.
 *
 * The excess over the nearer neighbour must pass eight standard deviations of the noise and two and a half steps,
 * three quarters of the swing among the two readings on each side (a crest at five readings a period has 0.62 of it),
 * and two and a half times the second-largest deviation among the three on each side (a ring too fast for the rate).
 * @returns  their indices, in order
 */
export function findSpikes(w: Float64Array, from: number, to: number, sigmaN: number, stepN: number): number[] {
  const least = Math.max(8 * sigmaN, 2.5 * stepN);
  const found: number[] = [];
  const end = Math.min(to, w.length - 1); // no read past the end: it would make every number here an object
  for (let i = Math.max(from, 1); i < end; i += 1) {
    const v = w[i]!;
    const before = w[i - 1]!;
    // Nearly every reading leaves here; those with a neighbour missing go on to the careful look.
    if (Math.abs(v - before) < least) continue;
    const after = w[i + 1]!;
    if (Math.abs(v - after) < least || (v > before ? after > v : v < before && after < v)) continue;
    if (standsAlone(w, i, least)) found.push(i);
  }
  return found;
}

function standsAlone(w: Float64Array, i: number, least: number): boolean {
  const before = neighbours(w, i, -1);
  const after = neighbours(w, i, 1);
  if (before.length === 0 || after.length === 0) return false;
  const v = w[i]!;
  if (Number.isNaN(v)) return false;
  const up = v > before[0]!;
  if (up !== v > after[0]!) return false;
  const excess = Math.min(Math.abs(v - before[0]!), Math.abs(v - after[0]!));
  const near = [...before.slice(0, 2), ...after.slice(0, 2)];
  if (excess < Math.max(least, 0.75 * (Math.max(...near) - Math.min(...near)))) return false;
  // Each side about its own middle: a step or a rise beside the spike is no ring.
  const deviations = [...about(before), ...about(after)].sort((a, b) => b - a);
  return Math.abs(v - median([...before, ...after])) > 2.5 * (deviations[1] ?? 0);
}

function about(side: readonly number[]): number[] {
  const middle = median(side);
  return side.map((x) => Math.abs(x - middle));
}

/** The nearest three readings on one side, nearest first; places without one are stepped over, five at most. */
function neighbours(w: Float64Array, i: number, direction: 1 | -1): number[] {
  const found: number[] = [];
  for (let k = 1; k <= 8 && found.length < 3; k += 1) {
    const v = w[i + k * direction];
    if (v !== undefined && !Number.isNaN(v)) found.push(v);
  }
  return found;
}
