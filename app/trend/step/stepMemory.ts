import { medianAbsoluteDeviation, normalPerMad } from "../../numerics/medianAbsoluteDeviation.ts";

/**
 * By what factor the variance of a mean grows because neighbouring values remember one another, judged without
 * taking steps for memory: from the lag-1 autocorrelation of the differences of neighbours, those beyond three robust
 * standard deviations left out: a step is one wild difference and no more. For independent values
 * that autocorrelation is -1/2, for values of memory r it is (r - 1)/2.
 * @param values  in the order they came
 * @returns  (1 + r)/(1 - r) where r is above 0 at 5 %, one-sided; else 1, in fewer than twelve values too
 * @see G. E. P. Box and G. M. Jenkins, Time Series Analysis, 3.4 (autocorrelations); M. S. Bartlett, JRSS Supplement 8
 *      (1946) 27 (their standard error: for differences of independent values the root of 1/(2n), twice that for r)
 */
export function stepMemory(values: Float64Array): number {
  const n = values.length;
  if (n < 12) return 1;
  const steps = new Float64Array(n - 1);
  for (let i = 0; i < steps.length; i += 1) steps[i] = values[i + 1]! - values[i]!;
  const most = 3 * normalPerMad * medianAbsoluteDeviation(steps);
  if (!(most > 0)) return 1;
  let sum = 0;
  for (let i = 0; i < steps.length; i += 1) {
    if (Math.abs(steps[i]!) > most) steps[i] = 0;
    sum += steps[i]!;
  }
  const r = 1 + 2 * lagOne(steps, sum / steps.length);
  if (!(r > ONE_SIDED_5 * Math.sqrt(2 / n))) return 1;
  const held = Math.min(0.9, r);
  return (1 + held) / (1 - held);
}

const ONE_SIDED_5 = 1.6448536269514722;

function lagOne(values: Float64Array, mean: number): number {
  let squares = 0;
  let products = 0;
  for (let i = 0; i < values.length; i += 1) {
    squares += (values[i]! - mean) ** 2;
    if (i > 0) products += (values[i]! - mean) * (values[i - 1]! - mean);
  }
  return squares > 0 ? products / squares : -0.5;
}
