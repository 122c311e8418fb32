import { describe, expect, it } from "vitest";
import { studentCdf } from "../../../app/numerics/studentCdf.ts";
import { studentQuantile } from "../../../app/numerics/studentQuantile.ts";
import { leastSquaresLine } from "../../../app/trend/leastSquaresLine.ts";
import published from "../../published/trend-tests.json" with { type: "json" };

const chloride = published.cases.find((c) => c.name.startsWith("chloride"))!;
const x = chloride.inputs.elapsed_days!;
const y = chloride.inputs.values;

describe("leastSquaresLine", () => {
  // EPA 530/R-09-007, example 17-5: printed residuals; slope test and interval recomputed (trend-tests.json).
  it("leaves the printed residuals of the chloride example", () => {
    const { slope, intercept } = leastSquaresLine(x, y)!;
    for (const [i, printed] of chloride.expected.published_residuals!.entries()) {
      expect(Math.abs(y[i]! - intercept - slope * x[i]! - printed)).toBeLessThan(1e-12);
    }
  });

  it("meets slope, standard error, t, p and interval of the chloride example", () => {
    const { slope, intercept, s, sxx, degreesOfFreedom } = leastSquaresLine(x, y)!;
    const want = chloride.expected.recomputed;
    const standard = s / Math.sqrt(sxx);
    const half = studentQuantile(0.975, degreesOfFreedom) * standard;
    expect(slope / want.slope_per_day!).toBeCloseTo(1, 12);
    expect(intercept / want.intercept!).toBeCloseTo(1, 12);
    expect(standard / want.se_slope!).toBeCloseTo(1, 12);
    expect(slope / standard / want.t!).toBeCloseTo(1, 12);
    expect((2 * studentCdf(-slope / standard, degreesOfFreedom)) / want.p_two_sided!).toBeCloseTo(1, 9);
    expect((slope - half) / want.slope_interval_95![0]!).toBeCloseTo(1, 10);
    expect((slope + half) / want.slope_interval_95![1]!).toBeCloseTo(1, 10);
  });

  it("keeps its digits with milliseconds since 1970", () => {
    const inMs = x.map((d) => 1.9e12 + d * 86_400_000);
    expect((leastSquaresLine(inMs, y)!.slope * 86_400_000) / leastSquaresLine(x, y)!.slope).toBeCloseTo(1, 10);
  });

  it("has no line where all x are equal, and refuses one point", () => {
    expect(leastSquaresLine([1, 1], [2, 3])).toBeUndefined();
    expect(() => leastSquaresLine([1], [2])).toThrow(RangeError);
  });
});
