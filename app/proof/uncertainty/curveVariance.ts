import type { PolynomialFit } from "../../numerics/fitPolynomial.ts";
import { polynomialAt } from "../../numerics/polynomialAt.ts";
import type { RunEffect } from "./runEffect.ts";

/** A variance with the degrees of freedom it was estimated with. */
export type Variance = { readonly variance: number; readonly degreesOfFreedom: number };

/**
 * Variance of a fitted curve at a load, in squared indications. With runs, the part of the leverage that lies along
 * the slope carries the variance between runs, the rest that within them.
 * @returns  `between` is undefined where runs are not told apart
 * @see Draper and Smith, Applied Regression Analysis, 1.4
 */
export function curveVariance(
  fit: PolynomialFit,
  runs: RunEffect | undefined,
  x: number,
): { within: Variance; between: Variance | undefined } {
  const { leverage } = polynomialAt(fit, x);
  if (runs === undefined)
    return {
      within: { variance: leverage * fit.residualSd ** 2, degreesOfFreedom: fit.residualDf },
      between: undefined,
    };
  const along = Math.min(leverage, (x * x) / runs.squaredLoads);
  return {
    within: { variance: (leverage - along) * runs.withinMeanSquare, degreesOfFreedom: runs.withinDf },
    between: { variance: along * runs.betweenMeanSquare, degreesOfFreedom: runs.betweenDf },
  };
}
