/**
 * Crests and troughs that stand out by more than `least`, in turn, in one pass: a crest is the highest reading between
 * two troughs that both lie more than `least` below it. The crests are just the maxima whose prominence exceeds
 * `least`. A flat top counts once, at its middle (rounded down); the first reading is no turning point, and the last
 * one needs readings after it that fall (rise) by more than `least`.
 * @param values  readings in one unit; NaN where there is none
 * @param from  first index, taken for a trough
 * @param to  one past the last
 * @param least  0 or more, in the unit of `values`
 * @returns  indices: crest, trough, crest, ...
 * @see prominence as SciPy's signal module defines it
 */
export function turningPoints(values: ArrayLike<number>, from: number, to: number, least: number): number[] {
  const turns: number[] = [];
  let sign = 1; // 1: looking for a crest, -1: for a trough
  let first = from; // of the extreme so far
  let last = from; // of its flat top
  for (let i = from + 1; i < to; i += 1) {
    const ahead = sign * (values[i]! - values[first]!);
    if (ahead > 0 || Number.isNaN(values[first]!)) {
      first = i;
      last = i;
    } else if (ahead === 0 && i === last + 1) last = i;
    else if (ahead < -least) {
      if (first > from) turns.push((first + last) >> 1);
      sign = -sign;
      first = i;
      last = i;
    }
  }
  return turns;
}
