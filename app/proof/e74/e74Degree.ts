import { fitPolynomial } from "../../numerics/fitPolynomial.ts";
import { studentQuantile } from "../../numerics/studentQuantile.ts";
import type { AstmE74Table } from "../tables/astmE74Table.ts";

export type E74Trial = {
  readonly degree: number;
  readonly residualSd: number;
  /** Residual standard deviation of the degree below over this one's; undefined for degree 1. */
  readonly ratio: number | undefined;
  /** What the ratio must exceed for this degree to be worth it; undefined for degree 1. */
  readonly factor: number | undefined;
};

/**
 * Factor C(n1, m): how much the residual standard deviation must fall for degree m to be kept.
 * @param forces  n1, number of different forces; at least degree + 2
 * @param probability  0.975 in the standard
 * @see ASTM E74-18, annex A1 (from memory; the closed formula gives the factors of its table)
 */
export function e74DegreeFactor(forces: number, degree: number, probability: number): number {
  const df = forces - degree - 1;
  if (!(df >= 1)) throw new RangeError(`degree ${degree} needs at least ${degree + 2} forces, got ${forces}`);
  const f = studentQuantile(0.5 + probability / 2, df) ** 2; // F(p; 1, df) is a squared t
  return Math.sqrt(1 + (f - 1) / (forces - degree));
}

/**
 * Degree of best fit to the averaged data: from the highest degree down, the first that lowers the residual standard
 * deviation enough.
 * @param x  different forces
 * @param y  mean deflection at each
 * @returns  degree 1 when none does; only degrees that leave a reading over are tried
 */
export function e74Degree(
  x: readonly number[],
  y: readonly number[],
  table: AstmE74Table,
): { degree: number; trials: readonly E74Trial[] } {
  const highest = Math.max(1, Math.min(table.highestDegree, x.length - 2));
  let below: number | undefined;
  const trials = Array.from({ length: highest }, (_, i): E74Trial => {
    const degree = i + 1;
    const { residualSd } = fitPolynomial(x, y, degree);
    const ratio = below === undefined ? undefined : below / residualSd;
    below = residualSd;
    return {
      degree,
      residualSd,
      ratio,
      factor: degree === 1 ? undefined : e74DegreeFactor(x.length, degree, table.degreeProbability),
    };
  });
  const kept = trials.findLast((t) => t.ratio !== undefined && t.ratio > t.factor!);
  return { degree: kept?.degree ?? 1, trials };
}
