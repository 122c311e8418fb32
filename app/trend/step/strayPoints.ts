import { neighbourScatter } from "./neighbourScatter.ts";

/**
 * Checks that stand off alone: one off, the next one back (a chip on the taper, the gauge not zeroed). Both
 * neighbours agree with each other and the value is far from both, to the same side. The first and the last value
 * never qualify: what follows the last is not known, and it may be the beginning of a step.
 * @param values  in the order they came, each finite
 * @returns  positions from 0; none in fewer than six values
 */
export function strayPoints(values: ArrayLike<number>): number[] {
  const n = values.length;
  if (n < 6) return [];
  const sigma = neighbourScatter(values);
  const found: number[] = [];
  for (let i = 1; i < n - 1; i += 1) {
    const before = values[i]! - values[i - 1]!;
    const after = values[i]! - values[i + 1]!;
    const off = Math.min(Math.abs(before), Math.abs(after));
    if (before > 0 !== after > 0 || off <= FAR * sigma || off <= 0) continue;
    if (Math.abs(before - after) < Math.max(CLOSE * sigma, off / 3) && found.at(-1) !== i - 1) found.push(i);
  }
  return found;
}

/** In standard deviations between checks; common practice, no source. */
const FAR = 6;
const CLOSE = 3;
