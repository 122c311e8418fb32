/**
 * A zero of `f` between two points where its sign differs: bisection that takes the secant's point when that
 * lies inside, so it never fails and is seldom slow.
 * @param f  continuous between `a` and `b`
 * @returns  x with f(x) = 0, or the end of a bracket no wider than rounding
 * @throws RangeError  f has the same sign at both ends, or is not finite there
 * @see Dowell and Jarratt, BIT 11 (1971) 168, for the halved weight of the end that stays
 */
export function findRoot(f: (x: number) => number, a: number, b: number): number {
  let low = a;
  let high = b;
  let fLow = f(low);
  let fHigh = f(high);
  if (fLow === 0) return low;
  if (fHigh === 0) return high;
  if (!(Number.isFinite(fLow) && Number.isFinite(fHigh)) || fLow > 0 === fHigh > 0) {
    throw new RangeError(`findRoot requires a change of sign between ${a} and ${b}`);
  }
  const rising = fHigh > 0;
  let lastLow: boolean | undefined;
  for (let round = 0; round < 200; round += 1) {
    const middle = low / 2 + high / 2;
    const secant = (low * fHigh - high * fLow) / (fHigh - fLow);
    // Every third round halves the bracket, whatever the secant says.
    const inside = (secant - low) * (secant - high) < 0;
    const x = inside && round % 3 !== 2 ? secant : middle;
    if (x === low || x === high || Math.abs(high - low) <= 4e-16 * Math.abs(middle)) return x;
    const fx = f(x);
    if (fx === 0) return x;
    const isLow = fx > 0 !== rising;
    if (isLow) {
      low = x;
      fLow = fx;
      if (lastLow === true) fHigh /= 2;
    } else {
      high = x;
      fHigh = fx;
      if (lastLow === false) fLow /= 2;
    }
    lastLow = isLow;
  }
  return low / 2 + high / 2;
}
