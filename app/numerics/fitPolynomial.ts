import { type DoubleDouble, ddAdd, ddDivide, ddMultiply, ddOf, ddSubtract } from "./doubleDouble.ts";
import { ddDot, type OrthogonalBasis, orthogonalBasis } from "./orthogonalBasis.ts";

export type PolynomialFit = {
  readonly degree: number;
  /** False: the curve passes through zero, `coefficients[0]` is 0 and not estimated. */
  readonly constant: boolean;
  readonly n: number;
  /** Constant term first, in the units of y and x. */
  readonly coefficients: readonly number[];
  readonly coefficientSd: readonly number[];
  readonly residuals: readonly number[];
  readonly residualDf: number;
  readonly residualSumOfSquares: number;
  readonly residualSd: number;
  /** About the mean of y; about zero where the constant is left out. */
  readonly rSquared: number;
  /** Sum of squared residuals the curves of lower degree leave, from degree 0 (1 without a constant) to `degree`. */
  readonly sumOfSquaresByDegree: readonly number[];
  readonly basis: OrthogonalBasis;
  /** Coefficients in the orthogonal basis; use these, not the powers of x, to compute values. */
  readonly weights: readonly number[];
};

/**
 * Least-squares polynomial of y on x, unweighted, solved over orthogonal polynomials in 31-digit arithmetic:
 * the coefficients of the powers of x keep their digits although those powers are nearly dependent.
 * @param x  loads, finite, in one unit
 * @param y  indications, finite, one for each load
 * @param degree  1 (0 with a constant) to 12
 * @param constant  whether a constant term is fitted
 * @throws RangeError  lengths differ, a figure is not finite, the degree is outside its range, no reading is
 *   left over to judge the fit, or there are fewer different loads than coefficients
 * @see Draper and Smith, Applied Regression Analysis, ch. 12; G. E. Forsythe, J. SIAM 5 (1957) 74
 */
export function fitPolynomial(
  x: readonly number[],
  y: readonly number[],
  degree: number,
  constant = true,
): PolynomialFit {
  const terms = constant ? degree + 1 : degree;
  const n = x.length;
  refuse(x, y, degree, terms);
  const { basis, columns, monomials } = orthogonalBasis(x, terms, constant);
  let rest: DoubleDouble[] = y.map(ddOf);
  const weights: DoubleDouble[] = [];
  const left: number[] = [];
  for (const column of columns) {
    const weight = ddDivide(ddDot(rest, column), ddDot(column, column));
    rest = rest.map((r, i) => ddSubtract(r, ddMultiply(weight, column[i]!)));
    weights.push(weight);
    left.push(ddDot(rest, rest).hi);
  }
  const residualSumOfSquares = left.at(-1)!;
  const residualDf = n - terms;
  const residualSd = Math.sqrt(residualSumOfSquares / residualDf);
  const total = constant ? left[0]! : ddDot(y.map(ddOf), y.map(ddOf)).hi;
  return {
    degree,
    constant,
    n,
    coefficients: powers(weights, monomials, degree),
    coefficientSd: powerSds(basis, monomials, degree).map((v) => v * residualSd),
    residuals: rest.map((r) => r.hi),
    residualDf,
    residualSumOfSquares,
    residualSd,
    // Equal indications leave nothing to explain: the curve explains none of it.
    rSquared: total > 0 ? 1 - residualSumOfSquares / total : 0,
    sumOfSquaresByDegree: left,
    basis,
    weights: weights.map((w) => w.hi),
  };
}

function refuse(x: readonly number[], y: readonly number[], degree: number, terms: number): void {
  if (x.length !== y.length)
    throw new RangeError(`fitPolynomial requires as many y as x, got ${y.length} and ${x.length}`);
  if (![...x, ...y].every(Number.isFinite)) throw new RangeError("fitPolynomial requires finite figures");
  if (!(Number.isInteger(degree) && degree <= 12 && terms >= 1))
    throw new RangeError(`fitPolynomial knows no degree ${degree}`);
  if (x.length <= terms)
    throw new RangeError(`${x.length} readings leave none over to judge a fit of ${terms} coefficients`);
  const levels = new Set(x).size;
  if (levels < terms) throw new RangeError(`${terms} coefficients need as many different loads, got ${levels}`);
}

/** From the orthogonal basis to powers of x: the step that would lose the digits in plain doubles. */
function powers(
  weights: readonly DoubleDouble[],
  monomials: readonly (readonly DoubleDouble[])[],
  degree: number,
): number[] {
  return Array.from({ length: degree + 1 }, (_, j) => {
    let sum = ddOf(0);
    for (let k = 0; k < weights.length; k += 1) sum = ddAdd(sum, ddMultiply(weights[k]!, monomials[k]![j] ?? ddOf(0)));
    return sum.hi;
  });
}

/** Standard deviation of each power's coefficient for a residual standard deviation of 1. */
function powerSds(basis: OrthogonalBasis, monomials: readonly (readonly DoubleDouble[])[], degree: number): number[] {
  return Array.from({ length: degree + 1 }, (_, j) => {
    let variance = 0;
    for (let k = 0; k < monomials.length; k += 1) variance += (monomials[k]![j]?.hi ?? 0) ** 2 / basis.squaredNorms[k]!;
    return Math.sqrt(variance);
  });
}
