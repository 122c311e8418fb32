/**
 * exp(-z²/2), the bell's shape without its factor. The square is taken in two parts: rounding z² once would cost
 * z²/2 units in the last place of the result, three digits at z = 38.
 * @param z  any number, the infinities too
 * @returns  0 to 1
 * @see Journal of Statistical Software 11 (4), 2004: the split used there for the normal distribution
 */
export function expMinusHalfSquare(z: number): number {
  const size = Math.abs(z);
  if (size > 40) return 0; // below the smallest double, and Infinity must not reach the subtraction
  const head = Math.round(size * 16) / 16; // its square is exact
  const rest = size - head;
  return Math.exp(-0.5 * head * head) * Math.exp(-rest * (head + 0.5 * rest));
}
