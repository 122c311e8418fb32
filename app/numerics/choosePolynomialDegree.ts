import { fCdf } from "./fCdf.ts";
import { fitPolynomial } from "./fitPolynomial.ts";

export type DegreeTrial = {
  readonly degree: number;
  readonly residualSumOfSquares: number;
  /** Probability of so large a gain by the next power alone, and by all higher powers together, if they were not needed. */
  readonly pNext: number | undefined;
  readonly pHigher: number | undefined;
};

export type DegreeChoice = { readonly degree: number; readonly trials: readonly DegreeTrial[] };

/**
 * The lowest degree that the readings do not contradict: neither the next power alone nor all higher ones
 * together are significant by the F test against the highest degree tried.
 * @param x  loads, finite
 * @param y  indications, finite
 * @param highest  highest degree tried, 1 to 12; the loads must carry it
 * @param level  significance level, such as 0.05
 * @throws RangeError  as `fitPolynomial` for the highest degree
 * @see Draper and Smith, Applied Regression Analysis, 6.1 (extra sum of squares) and 12
 */
export function choosePolynomialDegree(
  x: readonly number[],
  y: readonly number[],
  highest: number,
  level = 0.05,
): DegreeChoice {
  const full = fitPolynomial(x, y, highest);
  const left = full.sumOfSquaresByDegree;
  // What the rounding of the indications alone leaves: below it there is nothing to explain.
  const rounding = y.reduce((sum, v) => sum + (v * 2 ** -51) ** 2, 0);
  const p = (gain: number, terms: number) => {
    if (gain <= rounding) return 1;
    const f = gain / terms / (Math.max(full.residualSumOfSquares, rounding) / full.residualDf);
    return fCdf(1 / f, full.residualDf, terms);
  };
  const trials = Array.from({ length: highest }, (_, i): DegreeTrial => {
    const degree = i + 1;
    const here = left[degree]!;
    if (degree === highest) return { degree, residualSumOfSquares: here, pNext: undefined, pHigher: undefined };
    return {
      degree,
      residualSumOfSquares: here,
      pNext: p(here - left[degree + 1]!, 1),
      pHigher: p(here - left[highest]!, highest - degree),
    };
  });
  const fits = trials.find((t) => (t.pNext ?? 1) >= level && (t.pHigher ?? 1) >= level);
  return { degree: fits?.degree ?? highest, trials };
}
