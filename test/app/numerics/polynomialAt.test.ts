import { describe, expect, it } from "vitest";
import { fitPolynomial } from "../../../app/numerics/fitPolynomial.ts";
import { orthogonalBasis } from "../../../app/numerics/orthogonalBasis.ts";
import { polynomialAt } from "../../../app/numerics/polynomialAt.ts";
import pontius from "../../published/nist-strd-pontius.json" with { type: "json" };

describe("polynomialAt", () => {
  const { x, y } = pontius.inputs;
  const fit = fitPolynomial(x, y, 2);

  // NIST StRD Pontius: the certified coefficients, summed as powers.
  it("gives the value and slope of the certified curve", () => {
    const [a, b, c] = pontius.expected.coefficients as [number, number, number];
    for (const load of [0, 150000, 1.7e6, 3e6]) {
      const at = polynomialAt(fit, load);
      expect(at.value).toBeCloseTo(a + b * load + c * load * load, 14);
      expect((b + 2 * c * load) / at.slope).toBeCloseTo(1, 12);
    }
  });

  it("has leverages that sum to the number of coefficients over the loads of the fit", () => {
    expect(x.reduce((sum, v) => sum + polynomialAt(fit, v).leverage, 0)).toBeCloseTo(3, 12);
  });

  it("pins the zero down with the constant's certified standard deviation", () => {
    const u = fit.residualSd * Math.sqrt(polynomialAt(fit, 0).leverage);
    expect(u / pontius.expected.coefficient_sd[0]!).toBeCloseTo(1, 11);
  });

  it("is zero at zero load, with certainty, where no constant is fitted", () => {
    expect(polynomialAt(fitPolynomial(x, y, 3, false), 0)).toMatchObject({ value: 0, leverage: 0 });
  });

  it("refuses a load that is not finite", () => {
    expect(() => polynomialAt(fit, NaN)).toThrow(RangeError);
  });
});

describe("orthogonalBasis", () => {
  it.each([true, false])("is orthogonal over unevenly spread loads, constant %s", (constant) => {
    const loads = [1, 2, 2, 5, 10, 20, 50, 100];
    const { columns } = orthogonalBasis(loads, 5, constant);
    for (let i = 0; i < 5; i += 1) {
      for (let j = 0; j < i; j += 1) {
        const dot = columns[i]!.reduce((sum, v, k) => sum + v.hi * columns[j]![k]!.hi, 0);
        const size = Math.hypot(...columns[i]!.map((v) => v.hi)) * Math.hypot(...columns[j]!.map((v) => v.hi));
        expect(Math.abs(dot) / size).toBeLessThan(1e-15);
      }
    }
  });

  it("refuses more terms than there are different loads", () => {
    expect(() => orthogonalBasis([1, 1, 2, 2], 3, true)).toThrow(RangeError);
  });
});
