/** Every pair of places is tried: as many steps as a check has neighbours squared. */
const MOST = 400;

export type TwoSteps = {
  /** Sum of squares that three constants leave. */
  readonly rest: number;
  /** First values after each step. */
  readonly first: number;
  readonly second: number;
  /** What is left without the first step, and without the second. */
  readonly withoutFirst: number;
  readonly withoutSecond: number;
};

/**
 * The best two steps between three constant levels. Two steps the same way look like a slope to whoever looks for one
 * step only, and each hides the other.
 * @param y  in the order they came
 * @param side  least number of values of a level
 * @returns  undefined with too few values, or so many that trying every pair would take too long
 */
export function scanTwoSteps(y: Float64Array, side: number): TwoSteps | undefined {
  const n = y.length;
  if (n < 3 * side || n > MOST) return undefined;
  const sums = new Float64Array(n + 1);
  let squares = 0;
  let mean = 0;
  for (let i = 0; i < n; i += 1) mean += y[i]! / n;
  for (let i = 0; i < n; i += 1) {
    const d = y[i]! - mean;
    sums[i + 1] = sums[i]! + d;
    squares += d * d;
  }
  let best = -1;
  let first = 0;
  let second = 0;
  for (let a = side; a <= n - 2 * side; a += 1) {
    const before = (sums[a]! * sums[a]!) / a;
    for (let b = a + side; b <= n - side; b += 1) {
      const middle = sums[b]! - sums[a]!;
      const after = sums[n]! - sums[b]!;
      const gain = before + (middle * middle) / (b - a) + (after * after) / (n - b);
      if (gain <= best) continue;
      best = gain;
      first = a;
      second = b;
    }
  }
  const one = (at: number) => squares - sums[at]! ** 2 / at - (sums[n]! - sums[at]!) ** 2 / (n - at);
  return { rest: Math.max(0, squares - best), first, second, withoutFirst: one(second), withoutSecond: one(first) };
}
