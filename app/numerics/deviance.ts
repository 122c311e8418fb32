/**
 * x ln(x/m) + m - x: how far a count x lies from its mean m. Near x = m the two halves cancel, so there the
 * logarithm's series in (x - m)/(x + m) is summed instead.
 * @param x  above 0
 * @param m  above 0
 * @param difference  x - m, when the caller knows it better than the subtraction would give it
 * @returns  0 or more
 * @see C. Loader, Fast and accurate computation of binomial probabilities, 2000: the saddle-point expansion
 */
export function deviance(x: number, m: number, difference: number = x - m): number {
  if (Math.abs(difference) > 0.1 * (x + m)) return x * Math.log(x / m) - difference;
  const v = difference / (x + m);
  let sum = difference * v;
  let term = 2 * x * v;
  for (let j = 3; ; j += 2) {
    term *= v * v;
    const next = sum + term / j;
    if (next === sum) return sum;
    sum = next;
  }
}
