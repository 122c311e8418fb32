import { scaledErfc } from "./scaledErfc.ts";

/**
 * Error function, 2/√π times the integral of exp(-t²) from 0 to x: the share of a normal distribution within
 * ±x·√2 standard deviations. A series of positive terms near 0, the complement further out: neither cancels.
 * @param x  any number, the infinities too
 * @returns  -1 to 1; relative error below 1e-15 times 3, near 0 too
 * @throws RangeError  x is not a number
 * @see Abramowitz and Stegun 7.1.6
 */
export function erf(x: number): number {
  const size = Math.abs(x);
  if (size < 0.75) return series(x);
  const value = size > 6 ? 1 : 1 - Math.exp(-size * size) * scaledErfc(size);
  return x < 0 ? -value : value;
}

function series(x: number): number {
  const square = x * x;
  let term = 1;
  let sum = 1;
  for (let n = 1; term > sum * 1e-17; n += 1) {
    term *= (2 * square) / (2 * n + 1);
    sum += term;
  }
  return (2 / Math.sqrt(Math.PI)) * x * Math.exp(-square) * sum;
}
