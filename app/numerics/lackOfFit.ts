import { fCdf } from "./fCdf.ts";
import type { PolynomialFit } from "./fitPolynomial.ts";

export type LackOfFit = {
  readonly f: number;
  readonly aboveDf: number;
  readonly belowDf: number;
  /** Probability of so large an F when the curve is right. */
  readonly p: number;
  readonly lackSumOfSquares: number;
  readonly pureSumOfSquares: number;
};

/**
 * Tests whether a curve misses its readings by more than repeated readings of the same load differ.
 * Works on residuals, so loads that repeat nearly but not exactly are compared at the curve's own height.
 * @param levels  for each reading of the fit, the load step it repeats; any labels
 * @returns  undefined where no load is repeated, or there are no more loads than coefficients
 * @throws RangeError  not as many labels as readings
 * @see NIST/SEMATECH e-Handbook 4.4.4.6; Draper and Smith, Applied Regression Analysis, 2.1
 */
export function lackOfFit(fit: PolynomialFit, levels: readonly (number | string)[]): LackOfFit | undefined {
  if (levels.length !== fit.n) throw new RangeError(`lackOfFit requires ${fit.n} labels, got ${levels.length}`);
  const groups = new Map<number | string, number[]>();
  levels.forEach((level, i) => {
    const group = groups.get(level);
    if (group === undefined) groups.set(level, [fit.residuals[i]!]);
    else group.push(fit.residuals[i]!);
  });
  const belowDf = fit.n - groups.size;
  const aboveDf = fit.residualDf - belowDf;
  if (belowDf < 1 || aboveDf < 1) return undefined;
  let pure = 0;
  let lack = 0;
  for (const group of groups.values()) {
    const mean = group.reduce((a, b) => a + b, 0) / group.length;
    lack += group.length * mean * mean;
    for (const r of group) pure += (r - mean) ** 2;
  }
  const f = lack / aboveDf / (pure / belowDf);
  // No scatter at all: the curve is exact or plainly wrong.
  if (pure === 0)
    return {
      f: lack > 0 ? Infinity : 0,
      aboveDf,
      belowDf,
      p: lack > 0 ? 0 : 1,
      lackSumOfSquares: lack,
      pureSumOfSquares: 0,
    };
  const p = f > 0 ? fCdf(1 / f, belowDf, aboveDf) : 1;
  return { f, aboveDf, belowDf, p, lackSumOfSquares: lack, pureSumOfSquares: pure };
}
