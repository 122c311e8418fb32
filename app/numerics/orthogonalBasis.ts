import { type DoubleDouble, ddAdd, ddDivide, ddMultiply, ddOf, ddSubtract } from "./doubleDouble.ts";

/**
 * Polynomials that are orthogonal over the given loads, by their three-term recurrence in u = (x - centre)/halfWidth:
 * p0 = 1 (or u0 = x/halfWidth where the constant is left out), p(k+1) = (u - alpha[k]) p(k) - beta[k] p(k-1).
 * In this basis the least-squares coefficients of one degree are those of every higher degree too.
 * @see G. E. Forsythe, J. SIAM 5 (1957) 74
 */
export type OrthogonalBasis = {
  readonly centre: number;
  readonly halfWidth: number;
  readonly constant: boolean;
  readonly alpha: readonly number[];
  readonly beta: readonly number[];
  /** Sum over the loads of p(k) squared, k = 0 ... */
  readonly squaredNorms: readonly number[];
};

export type BasisColumns = {
  readonly basis: OrthogonalBasis;
  /** Values of each polynomial at each load. */
  readonly columns: readonly (readonly DoubleDouble[])[];
  /** monomials[k][j]: what x^j counts in p(k), in the units of x. */
  readonly monomials: readonly (readonly DoubleDouble[])[];
};

/**
 * Builds `terms` orthogonal polynomials over the loads `x`, which may repeat.
 * @param x  loads, finite; at least `terms` different ones (other than zero when `constant` is false)
 * @param constant  false: every polynomial passes through zero at zero load
 * @throws RangeError  the loads do not carry so many terms
 */
export function orthogonalBasis(x: readonly number[], terms: number, constant: boolean): BasisColumns {
  const low = x.reduce((a, b) => Math.min(a, b), Infinity);
  const high = x.reduce((a, b) => Math.max(a, b), -Infinity);
  const centre = low / 2 + high / 2;
  const halfWidth = high > low ? high / 2 - low / 2 : Math.max(Math.abs(high), Number.MIN_VALUE);
  const slope = ddDivide(ddOf(1), ddOf(halfWidth));
  const shift = ddDivide(ddOf(centre), ddOf(halfWidth));
  const u = x.map((v) => ddSubtract(ddMultiply(ddOf(v), slope), shift));
  const columns: DoubleDouble[][] = [];
  const monomials: DoubleDouble[][] = [];
  const alpha: DoubleDouble[] = [];
  const beta: DoubleDouble[] = [];
  const norms: DoubleDouble[] = [];
  for (let k = 0; k < terms; k += 1) {
    if (k === 0) {
      columns.push(x.map((v) => (constant ? ddOf(1) : ddMultiply(ddOf(v), slope))));
      monomials.push(constant ? [ddOf(1)] : [ddOf(0), slope]);
    } else {
      const a = alpha[k - 1]!;
      const b = beta[k - 1]!;
      columns.push(x.map((_, i) => nextValue(ddSubtract(u[i]!, a), b, columns[k - 1]![i]!, columns[k - 2]?.[i])));
      monomials.push(nextMonomials(slope, ddAdd(shift, a), b, monomials[k - 1]!, monomials[k - 2]));
    }
    const p = columns[k]!;
    const norm = ddDot(p, p);
    // Thirty digits carry the recurrence far below this; loads as close as that are the same load for every purpose.
    if (!(norm.hi > 1e-24 * x.length)) throw new RangeError(`the loads do not carry a polynomial of ${terms} terms`);
    norms.push(norm);
    alpha.push(
      ddDivide(
        ddDot(
          p.map((v, i) => ddMultiply(v, u[i]!)),
          p,
        ),
        norm,
      ),
    );
    beta.push(k === 0 ? ddOf(0) : ddDivide(norm, norms[k - 1]!));
  }
  const basis = { centre, halfWidth, constant, alpha: alpha.map(hi), beta: beta.map(hi), squaredNorms: norms.map(hi) };
  return { basis, columns, monomials };
}

/** Sum of products. */
export function ddDot(a: readonly DoubleDouble[], b: readonly DoubleDouble[]): DoubleDouble {
  let sum = ddOf(0);
  for (let i = 0; i < a.length; i += 1) sum = ddAdd(sum, ddMultiply(a[i]!, b[i]!));
  return sum;
}

const hi = (v: DoubleDouble) => v.hi;

function nextValue(
  step: DoubleDouble,
  b: DoubleDouble,
  last: DoubleDouble,
  before: DoubleDouble | undefined,
): DoubleDouble {
  const value = ddMultiply(step, last);
  return before === undefined ? value : ddSubtract(value, ddMultiply(b, before));
}

function nextMonomials(
  slope: DoubleDouble,
  offset: DoubleDouble,
  b: DoubleDouble,
  last: readonly DoubleDouble[],
  before: readonly DoubleDouble[] | undefined,
): DoubleDouble[] {
  return Array.from({ length: last.length + 1 }, (_, j) => {
    const risen = j === 0 ? ddOf(0) : ddMultiply(slope, last[j - 1]!);
    const stayed = ddSubtract(risen, ddMultiply(offset, last[j] ?? ddOf(0)));
    return before?.[j] === undefined ? stayed : ddSubtract(stayed, ddMultiply(b, before[j]));
  });
}
