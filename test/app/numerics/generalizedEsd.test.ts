import { describe, expect, it } from "vitest";
import { generalizedEsd } from "../../../app/numerics/generalizedEsd.ts";
import published from "../../published/outlier-tests.json" with { type: "json" };

const esd54 = published.cases.find((c) => c.name === "gesd-54")!;
const esd25 = published.cases.find((c) => c.name === "gesd-25")!;

describe("generalizedEsd", () => {
  // NIST/SEMATECH e-Handbook 1.3.5.17.3: printed values are cut to three decimals.
  it("meets the published statistics and critical values of the handbook's 54 readings", () => {
    const { steps } = generalizedEsd(esd54.inputs.values, 10);
    steps.forEach((step, i) => {
      expect(step.statistic - esd54.expected.published.R![i]!).toBeGreaterThanOrEqual(0);
      expect(step.statistic - esd54.expected.published.R![i]!).toBeLessThan(0.001);
      expect(step.critical - esd54.expected.published.critical![i]!).toBeLessThan(0.001);
      expect(Math.abs(step.statistic - esd54.expected.recomputed.R![i]!)).toBeLessThan(1e-8);
      expect(Math.abs(step.critical - esd54.expected.recomputed.critical![i]!)).toBeLessThan(1e-8);
    });
  });

  it("names the handbook's three outliers, in the order they are taken out, although the first two steps fail", () => {
    const { outliers } = generalizedEsd(esd54.inputs.values, 10);
    expect(outliers.map((i) => esd54.inputs.values[i])).toEqual(
      esd54.expected.recomputed.removed_in_order!.slice(0, 3),
    );
  });

  // EPA 530/R-09-007, Unified Guidance, example 12-4.
  it("meets EPA's example 12-4 to the printed digits", () => {
    const { steps, outliers } = generalizedEsd(esd25.inputs.values, 2);
    steps.forEach((step, i) => {
      expect(Math.abs(step.statistic - esd25.expected.published.R![i]!)).toBeLessThan(5e-7);
      expect(Math.abs(step.critical - esd25.expected.published.critical![i]!)).toBeLessThan(5e-7);
    });
    expect(outliers.map((i) => esd25.inputs.values[i])).toEqual(esd25.expected.published.outlier_values);
  });

  it("names nobody among readings that are all equal", () => {
    expect(generalizedEsd([5, 5, 5, 5, 5], 2).outliers).toEqual([]);
  });

  it.each([
    [[1, 2], 1],
    [[1, 2, 3], 0],
    [[1, 2, Number.NaN, 3], 1],
  ])("refuses %j for %i outliers", (values, most) => {
    expect(() => generalizedEsd(values, most)).toThrow(RangeError);
  });
});
