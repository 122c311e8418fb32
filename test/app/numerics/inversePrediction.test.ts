import { describe, expect, it } from "vitest";
import { fitPolynomial } from "../../../app/numerics/fitPolynomial.ts";
import { inversePrediction } from "../../../app/numerics/inversePrediction.ts";
import published from "../../published/inverse-prediction.json" with { type: "json" };
import caseStudy from "../../published/nist-load-cell-case-study.json" with { type: "json" };
import pontius from "../../published/nist-strd-pontius.json" with { type: "json" };

type Figures = Partial<Record<string, number>>;
const data = (c: (typeof published.cases)[number]) =>
  "x" in c.inputs
    ? c.inputs
    : (published.cases.find((d) => d.name === c.inputs.same_data_as)!.inputs as { x: number[]; y: number[] });
const halfLastDigit = (v: number) => 0.5 * 10 ** -(String(v).split(".")[1]?.length ?? 0) * 1.0001;

describe("inversePrediction", () => {
  // Regression textbook (1994), ch. 6, and a package article (2014); the source stands in the file beside each case.
  it.each(published.cases.map((c) => [c.name, c] as const))("meets %s", (_, c) => {
    const { x, y } = data(c) as { x: number[]; y: number[] };
    const options = { level: c.inputs.level, meanResponse: c.inputs.mean_response ?? false, from: -1000, to: 1000 };
    const got = inversePrediction(fitPolynomial(x, y, 1), c.inputs.y0, options)!;
    const want: Figures = c.expected.recomputed;
    const relative = (v: number | undefined, key: string) => expect(Math.abs(v! / want[key]! - 1)).toBeLessThan(1e-9);
    relative(got.estimate, "estimate");
    relative(got.lower, "lower");
    relative(got.upper, "upper");
    relative(got.standard, "wald_se");
    relative(got.waldLower, "wald_lower");
    relative(got.waldUpper, "wald_upper");
    const printed: Figures = "published" in c.expected ? (c.expected.published as Figures) : {};
    for (const key of ["estimate", "lower", "upper"] as const) {
      const value = printed[key];
      if (value !== undefined) expect(Math.abs(got[key]! - value)).toBeLessThanOrEqual(halfLastDigit(value));
    }
  });

  // NIST/SEMATECH e-Handbook 4.6.1.10 (figures from memory, confirmed by recomputation): a load from a deflection.
  it("reads the load of NIST's load cell back from a quadratic", () => {
    const { inputs, expected } = caseStudy;
    const fit = fitPolynomial(pontius.inputs.x, pontius.inputs.y, 2);
    const options = { level: inputs.confidence, meanResponse: false, from: 0, to: 3.3e6 };
    const got = inversePrediction(fit, [inputs.new_deflection], options)!;
    const { load, lower, upper } = expected.inverse.recomputed;
    for (const r of [got.estimate / load, got.lower! / lower, got.upper! / upper])
      expect(Math.abs(r - 1)).toBeLessThan(1e-8);
    const printed = expected.inverse.published_from_memory;
    expect([got.estimate, got.lower!, got.upper!].map(Math.round)).toEqual([
      printed.load,
      printed.lower,
      printed.upper,
    ]);
  });

  it("leaves an end open where the line is too uncertain to cross", () => {
    const fit = fitPolynomial([1, 2, 3, 4], [2, 1, 2.5, 1.8], 1);
    const got = inversePrediction(fit, [1.8], { level: 0.99, meanResponse: false, from: -100, to: 100 })!;
    expect([got.lower, got.upper]).toEqual([undefined, undefined]);
  });

  it("answers nothing for an indication the curve does not reach", () => {
    const fit = fitPolynomial([1, 2, 3, 4], [1, 2, 3, 4.1], 1);
    expect(inversePrediction(fit, [9], { level: 0.95, meanResponse: false, from: 0, to: 5 })).toBeUndefined();
  });

  it("refuses an empty list of readings and a level of 1", () => {
    const fit = fitPolynomial([1, 2, 3, 4], [1, 2, 3, 4.1], 1);
    const options = { level: 0.95, meanResponse: false, from: 0, to: 5 };
    expect(() => inversePrediction(fit, [], options)).toThrow(RangeError);
    expect(() => inversePrediction(fit, [2], { ...options, level: 1 })).toThrow(RangeError);
  });
});
