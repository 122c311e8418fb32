import { describe, expect, it } from "vitest";
import { choosePolynomialDegree } from "../../../app/numerics/choosePolynomialDegree.ts";
import { fCdf } from "../../../app/numerics/fCdf.ts";
import { fitPolynomial } from "../../../app/numerics/fitPolynomial.ts";
import { lackOfFit } from "../../../app/numerics/lackOfFit.ts";
import caseStudy from "../../published/nist-load-cell-case-study.json" with { type: "json" };
import pontius from "../../published/nist-strd-pontius.json" with { type: "json" };
import wampler1 from "../../published/nist-strd-wampler1.json" with { type: "json" };

const { x, y } = pontius.inputs;

describe("lackOfFit", () => {
  // NIST/SEMATECH e-Handbook 4.6.1.5; the printed F of the line came from single precision (2e-6 off).
  it("rejects the line through NIST's load cell", () => {
    const { published, recomputed } = caseStudy.expected.line;
    const got = lackOfFit(fitPolynomial(x, y, 1), x)!;
    expect(got.f / recomputed.lack_of_fit_F).toBeCloseTo(1, 8);
    expect(Math.abs(got.f / published.lack_of_fit_F - 1)).toBeLessThan(3e-6);
    expect([got.aboveDf, got.belowDf]).toEqual(published.lack_of_fit_df);
    expect(got.p).toBeLessThan(1e-12);
    expect(fCdf(recomputed.critical_F_05, got.aboveDf, got.belowDf)).toBeCloseTo(0.95, 9);
  });

  // NIST/SEMATECH e-Handbook 4.6.1.9; figures from memory, confirmed by recomputation.
  it("keeps the quadratic", () => {
    const { published_from_memory: printed, recomputed } = caseStudy.expected.quadratic;
    const got = lackOfFit(fitPolynomial(x, y, 2), x)!;
    expect(Math.abs(got.f / recomputed.lack_of_fit_F - 1)).toBeLessThan(1e-8);
    expect(got.f).toBeCloseTo(printed.lack_of_fit_F, 4);
    expect([got.aboveDf, got.belowDf]).toEqual(printed.lack_of_fit_df);
    expect(got.p).toBeGreaterThan(0.5);
  });

  it("has no answer without repeated loads", () => {
    expect(lackOfFit(fitPolynomial([1, 2, 3, 4], [1, 2, 3, 4.2], 1), [1, 2, 3, 4])).toBeUndefined();
  });

  it("calls a curve wrong that misses loads which repeat exactly", () => {
    const fit = fitPolynomial([1, 1, 2, 2, 3, 3], [1, 1, 4, 4, 9, 9], 1);
    expect(lackOfFit(fit, ["a", "a", "b", "b", "c", "c"])).toMatchObject({ p: expect.closeTo(0, 12) });
  });

  it("refuses another number of labels than readings", () => {
    expect(() => lackOfFit(fitPolynomial(x, y, 1), [1, 2])).toThrow(RangeError);
  });
});

describe("choosePolynomialDegree", () => {
  it("takes the quadratic for NIST's load cell", () => {
    const got = choosePolynomialDegree(x, y, 5);
    expect(got.degree).toBe(2);
    expect(got.trials[0]!.pNext).toBeLessThan(1e-12);
    expect(got.trials[1]!.pNext).toBeGreaterThan(0.05);
  });

  it("takes degree 5 for NIST Wampler1, exactly a polynomial of that degree, and a line for a line", () => {
    expect(choosePolynomialDegree(wampler1.inputs.x, wampler1.inputs.y, 7).degree).toBe(5);
    const loads = Array.from({ length: 12 }, (_, i) => i + 1);
    expect(
      choosePolynomialDegree(
        loads,
        loads.map((v) => 0.1 * v + 0.3),
        5,
      ).degree,
    ).toBe(1);
  });
});
