import { selectInPlace } from "./selectInPlace.ts";

/**
 * Several order statistics of the same values. From the greatest rank down: what a selection has moved behind its
 * rank need not be looked at again, and the rank next to the one before is a mere maximum.
 * @param values  reordered; finite
 * @param ranks  whole numbers from 1 (least) to the number of values, in any order, some perhaps twice
 * @returns  the value of each rank
 * @throws RangeError  a rank out of range
 */
export function selectRanks(values: Float64Array, ranks: readonly number[]): number[] {
  const found = ranks.map(() => Number.NaN);
  let length = values.length;
  let last = Number.NaN; // the value of rank length + 1
  for (const at of [...ranks.keys()].sort((a, b) => ranks[b]! - ranks[a]!)) {
    const rank = ranks[at]!;
    if (!(rank >= 1 && rank <= values.length))
      throw new RangeError(`selectRanks has ranks 1 to ${values.length}, got ${rank}`);
    if (rank < length) last = selectInPlace(values, rank - 1, length);
    else if (rank === length) last = greatest(values, length);
    found[at] = last;
    length = rank - 1;
  }
  return found;
}

/** Moves the greatest of the leading values to their end. */
function greatest(values: Float64Array, length: number): number {
  let at = 0;
  for (let i = 1; i < length; i += 1) if (values[i]! > values[at]!) at = i;
  const most = values[at]!;
  values[at] = values[length - 1]!;
  values[length - 1] = most;
  return most;
}
