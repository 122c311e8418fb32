import { describe, expect, it } from "vitest";
import { fitPolynomial } from "../../../app/numerics/fitPolynomial.ts";
import pontius from "../../published/nist-strd-pontius.json" with { type: "json" };
import wampler1 from "../../published/nist-strd-wampler1.json" with { type: "json" };
import wampler4 from "../../published/nist-strd-wampler4.json" with { type: "json" };

/** Digits in agreement; 15 where nothing differs. */
const logRelativeError = (got: number, certified: number) => Math.min(15, -Math.log10(Math.abs(got / certified - 1)));
const least = (got: readonly number[], certified: readonly number[]) =>
  Math.min(...got.map((v, i) => logRelativeError(v, certified[i]!)));

describe("fitPolynomial", () => {
  // NIST Statistical Reference Datasets, linear regression; certified to 15 digits.
  it.each([
    ["Pontius (a load cell)", pontius, 2, 12],
    ["Wampler4 (ill-conditioned)", wampler4, 5, 12],
  ])("keeps the certified digits of %s", (_, { inputs, expected }, degree, digits) => {
    const fit = fitPolynomial(Object.freeze(inputs.x), Object.freeze(inputs.y), degree);
    expect(least(fit.coefficients, expected.coefficients)).toBeGreaterThan(digits);
    expect(least(fit.coefficientSd, expected.coefficient_sd)).toBeGreaterThan(digits);
    expect(logRelativeError(fit.residualSd, expected.residual_sd)).toBeGreaterThan(digits);
    expect(logRelativeError(fit.residualSumOfSquares, expected.anova.residual_ss)).toBeGreaterThan(digits);
    expect(Math.abs(fit.rSquared - expected.r_squared)).toBeLessThan(1e-14);
    expect(fit.residualDf).toBe(expected.residual_df);
  });

  it("leaves nothing of NIST Wampler1, an exact polynomial of degree 5", () => {
    const fit = fitPolynomial(wampler1.inputs.x, wampler1.inputs.y, 5);
    expect(fit.coefficients).toEqual(wampler1.expected.coefficients);
    expect(fit.residualSd).toBeLessThan(1e-20);
    expect(fit.rSquared).toBe(1);
  });

  it("gives the same curve when the loads are shifted by a million", () => {
    const x = wampler4.inputs.x;
    const near = fitPolynomial(x, wampler4.inputs.y, 5);
    const far = fitPolynomial(
      x.map((v) => v + 1e6),
      wampler4.inputs.y,
      5,
    );
    expect(far.residualSd / near.residualSd).toBeCloseTo(1, 14);
    expect(far.coefficients[5]! / near.coefficients[5]!).toBeCloseTo(1, 12);
  });

  it("passes through zero where the constant is left out", () => {
    const x = [1, 2, 3, 4, 5, 6];
    const fit = fitPolynomial(
      x,
      x.map((v) => 3 * v - 0.5 * v ** 3),
      3,
      false,
    );
    expect(fit.coefficients[0]).toBe(0);
    expect(fit.coefficientSd[0]).toBe(0);
    for (const [i, b] of [3, 0, -0.5].entries()) expect(fit.coefficients[i + 1]).toBeCloseTo(b, 13);
    expect(fit.residualDf).toBe(3);
  });

  it("finds nothing explained in equal indications", () => {
    expect(fitPolynomial([1, 2, 3], [5, 5, 5], 1)).toMatchObject({ rSquared: 0, residualSd: 0, coefficients: [5, 0] });
  });

  it.each([
    ["no reading left over", [1, 2, 3], [1, 2, 3], 2, /leave none over/],
    ["fewer loads than coefficients", [1, 1, 2, 2, 2], [1, 2, 3, 4, 5], 2, /as many different loads, got 2/],
    ["lengths that differ", [1, 2, 3], [1, 2], 1, /as many y as x/],
    ["a figure that is not finite", [1, 2, NaN], [1, 2, 3], 1, /finite/],
    ["a degree that is no whole number", [1, 2, 3, 4], [1, 2, 3, 4], 1.5, /no degree 1.5/],
    ["a negative degree", [1, 2, 3, 4], [1, 2, 3, 4], -1, /no degree -1/],
    ["a degree above twelve", [1, 2, 3, 4], [1, 2, 3, 4], 13, /no degree 13/],
  ])("refuses %s", (_, x, y, degree, words) => {
    expect(() => fitPolynomial(x, y, degree)).toThrow(words);
  });
});
