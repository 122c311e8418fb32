import { expMinusHalfSquare } from "../../numerics/expMinusHalfSquare.ts";
import { gaussLegendre } from "../../numerics/gaussLegendre.ts";
import { normalCdf } from "../../numerics/normalCdf.ts";
import { solveLinear } from "../../numerics/solveLinear.ts";

/**
 * Average number of checks until a two-sided CUSUM alarms, limits known, for normal values whose mean is off by
 * `shift` standard deviations from the first on; `shift` 0: between false alarms.
 * @see D. C. Montgomery, Introduction to Statistical Quality Control, 6th ed., table 9.3; E. S. Page, Biometrika 41
 *      (1954) 100 (the integral equation)
 */
export function cusumRunLength(k: number, h: number, shift: number): number {
  return 1 / (1 / oneSidedCusum(k, h, shift) + 1 / oneSidedCusum(k, h, -shift));
}

function oneSidedCusum(k: number, h: number, shift: number): number {
  // From a sum of u the next is u + z + shift - k: cut off at 0, or somewhere up to h, or an alarm.
  const move = (from: number, to: number) => to - from + k - shift;
  const { nodes, weights } = gaussLegendre(NODES, 0, h);
  const starts = [0, ...nodes];
  const matrix = starts.map((from, row) =>
    starts.map((to, column) => {
      const step = column === 0 ? normalCdf(move(from, 0)) : weights[column - 1]! * density(move(from, to));
      return (row === column ? 1 : 0) - step;
    }),
  );
  return solveLinear(
    matrix,
    starts.map(() => 1),
  )[0]!;
}

/**
 * The same for an EWMA that starts at the target, with the limits of its final spread.
 * @see D. C. Montgomery, 6th ed., table 9.10; S. V. Crowder, Technometrics 29 (1987) 401 (the integral equation)
 */
export function ewmaRunLength(lambda: number, width: number, shift: number): number {
  const h = width * Math.sqrt(lambda / (2 - lambda));
  const { nodes, weights } = gaussLegendre(NODES, -h, h);
  const chance = (from: number, to: number) => density((to - (1 - lambda) * from) / lambda - shift) / lambda;
  const matrix = nodes.map((from, row) =>
    nodes.map((to, column) => (row === column ? 1 : 0) - weights[column]! * chance(from, to)),
  );
  const lengths = solveLinear(
    matrix,
    nodes.map(() => 1),
  );
  return 1 + nodes.reduce((sum, to, column) => sum + weights[column]! * chance(0, to) * lengths[column]!, 0);
}

/** Enough for six digits with the usual lambda, k and h. */
const NODES = 40;

const density = (z: number) => expMinusHalfSquare(z) / Math.sqrt(2 * Math.PI);
