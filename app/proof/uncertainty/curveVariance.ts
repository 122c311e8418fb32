import type { PolynomialFit } from "../../numerics/fitPolynomial.ts";
import { polynomialAt } from "../../numerics/polynomialAt.ts";
import type { RunEffect } from "./runEffect.ts";

/** A variance with the degrees of freedom it was estimated with. */
export type Variance = { readonly variance: number; readonly degreesOfFreedom: number };

/**
 * Variance of a fitted curve at a load, in squared indications. With runs, the part of the leverage that lies along
 * the slope carries the variance between runs, the rest that within them.
 * @returns  effective degrees of freedom by Welch and Satterthwaite; Infinity where nothing scatters
 * @see Draper and Smith, Applied Regression Analysis, 1.4; JCGM 100:2008, G.4
 */
export function curveVariance(fit: PolynomialFit, runs: RunEffect | undefined, x: number): Variance {
  const { leverage } = polynomialAt(fit, x);
  if (runs === undefined) return { variance: leverage * fit.residualSd ** 2, degreesOfFreedom: fit.residualDf };
  const along = Math.min(leverage, (x * x) / runs.squaredLoads);
  const between = along * runs.betweenMeanSquare;
  const within = (leverage - along) * runs.withinMeanSquare;
  return combineVariances([
    { variance: between, degreesOfFreedom: runs.betweenDf },
    { variance: within, degreesOfFreedom: runs.withinDf },
  ]);
}

/** Sum of independent variances, its degrees of freedom by Welch and Satterthwaite (JCGM 100:2008, G.2b). */
export function combineVariances(parts: readonly Variance[]): Variance {
  let variance = 0;
  let sum = 0;
  for (const part of parts) {
    variance += part.variance;
    sum += (part.variance * part.variance) / part.degreesOfFreedom;
  }
  return { variance, degreesOfFreedom: sum > 0 ? (variance * variance) / sum : Infinity };
}
