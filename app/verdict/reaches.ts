/**
 * Whether `a` reaches `b`, a value on the border counting as reaching it. Decimal figures such as 0.1 are not exact in
 * binary, so a fall from 900 to 810 may come out a hair under 10 %; differences within 1 part in 1e12 of the figures
 * they came from are rounding, far below anything a gauge can show, and count as equal.
 * @param size  the largest figure that went into `a` and `b`
 */
export function reaches(a: number, b: number, size: number): boolean {
  return a - b >= -1e-12 * Math.abs(size);
}
