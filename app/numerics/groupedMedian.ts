import { selectInPlace } from "./selectInPlace.ts";

/**
 * Median of readings that were rounded to steps: the readings equal to the middle one are taken as spread evenly over
 * its step, and the place in it where half of all are passed is the answer. Where the noise is a few steps or less
 * this finds the force between two displayed figures; a plain median can only name one of them.
 * @param values  rounded readings in one unit, each finite; one or more
 * @param step  the resolution in the same unit; above 0
 * @returns  the interpolated median
 * @throws RangeError  no value, one that is not finite, or no step
 * @see B. S. Everitt, The Cambridge Dictionary of Statistics, "median" of grouped data (formula from memory)
 */
export function groupedMedian(values: ArrayLike<number>, step: number): number {
  const n = values.length;
  if (n < 1) throw new RangeError("groupedMedian requires at least one value, got 0");
  if (!(step > 0 && Number.isFinite(step))) throw new RangeError(`groupedMedian requires a step above 0, got ${step}`);
  const scratch = new Float64Array(n);
  for (let i = 0; i < n; i += 1) {
    const v = values[i]!;
    if (!Number.isFinite(v)) throw new RangeError("groupedMedian requires finite values");
    scratch[i] = v;
  }
  const middle = selectInPlace(scratch, n >> 1);
  let below = 0;
  let within = 0;
  // Half a step of room: figures that came through a unit's factor differ in their last bits.
  for (let i = 0; i < n; i += 1) {
    if (scratch[i]! < middle - step / 2) below += 1;
    else if (scratch[i]! <= middle + step / 2) within += 1;
  }
  return middle - step / 2 + (step * (n / 2 - below)) / within;
}
