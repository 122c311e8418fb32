import type { PolynomialFit } from "../../numerics/fitPolynomial.ts";

export type RunEffect = {
  /** Mean square of the runs' own slopes, in squared indications; the residual variance again when runs do not differ. */
  readonly betweenMeanSquare: number;
  readonly betweenDf: number;
  /** What is left within runs. */
  readonly withinMeanSquare: number;
  readonly withinDf: number;
  /** Sum of the squared loads. */
  readonly squaredLoads: number;
};

/**
 * Splits the residuals of a curve into what whole runs have in common (mounting the gauge anew makes each run a
 * little steeper or flatter) and the rest. Readings of one run then do not count as independent about the slope.
 * @param x  the loads of the fit
 * @param runs  for each reading the label of its run
 * @returns  undefined with fewer than two runs, or too few readings to tell both parts
 * @see JCGM 100:2008, H.5 (analysis of variance); Searle, Casella, McCulloch, Variance Components, ch. 3
 */
export function runEffect(fit: PolynomialFit, x: readonly number[], runs: readonly string[]): RunEffect | undefined {
  const sums = new Map<string, { product: number; square: number }>();
  for (const [i, run] of runs.entries()) {
    const sum = sums.get(run) ?? { product: 0, square: 0 };
    sum.product += fit.residuals[i]! * x[i]!;
    sum.square += x[i]! * x[i]!;
    sums.set(run, sum);
  }
  const betweenDf = sums.size - 1;
  const withinDf = fit.residualDf - betweenDf;
  if (betweenDf < 1 || withinDf < 1) return undefined;
  let between = 0;
  let squaredLoads = 0;
  for (const { product, square } of sums.values()) {
    if (square > 0) between += (product * product) / square;
    squaredLoads += square;
  }
  const within = Math.max(0, fit.residualSumOfSquares - between);
  return {
    betweenMeanSquare: between / betweenDf,
    betweenDf,
    withinMeanSquare: within / withinDf,
    withinDf,
    squaredLoads,
  };
}
