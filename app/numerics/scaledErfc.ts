/**
 * Scaled complementary error function, exp(x²) · erfc(x): what is left of erfc when its steep factor is taken out,
 * so that tails far below the smallest number a double holds can still be compared.
 * A Chebyshev sum for (1 + 2x) · exp(x²) · erfc(x) in t = (x - 3.75)/(x + 3.75): that product runs from 1 to 2/√π
 * without a bend, so one sum serves the whole half line.
 * @param x  0 or more
 * @returns  between 1 (x = 0) and 0; relative error below 2e-15
 * @throws RangeError  x negative or not a number
 * @see Mathematics of Computation 36 (1981) 249 for the method; the coefficients were computed in 60 digits
 */
export function scaledErfc(x: number): number {
  if (!(x >= 0)) throw new RangeError(`scaledErfc requires x of 0 or more, got ${x}`);
  if (x > 1e15) return 1 / (x * Math.sqrt(Math.PI)); // t would round to 1; also takes Infinity
  const t = (x - 3.75) / (x + 3.75);
  let b1 = 0;
  let b2 = 0;
  for (let j = coefficients.length - 1; j > 0; j -= 1) {
    const b0 = 2 * t * b1 - b2 + coefficients[j]!;
    b2 = b1;
    b1 = b0;
  }
  return (t * b1 - b2 + coefficients[0]!) / (1 + 2 * x);
}

const coefficients = Float64Array.of(
  1.1775789345674017,
  -0.004590054580646478,
  -0.08424913336651792,
  0.05920993999819189,
  -0.026658668435305753,
  0.009074997670705265,
  -0.002413163540417608,
  0.0004907758365258086,
  -6.916973302501207e-5,
  4.13902798607301e-6,
  7.74038306619849e-7,
  -2.1886401049234397e-7,
  1.076499946567091e-8,
  4.521959811218287e-9,
  -7.754400208831351e-10,
  -6.318088340886684e-11,
  2.86879501093067e-11,
  1.9455868545777347e-13,
  -9.65469674843344e-13,
  3.25254814814874e-14,
  3.3478119482868056e-14,
  -1.864562880419313e-15,
  -1.2507950530688648e-15,
  7.418235256624044e-17,
  5.068148904796111e-17,
);
