import { describe, expect, it } from "vitest";
import { logBetaWeight } from "../../../app/numerics/logBetaWeight.ts";

describe("logBetaWeight", () => {
  it("is x^a y^b over B(a, b) where that is a plain fraction: B(2, 3) = 1/12, B(1/2, 1/2) = π", () => {
    expect(Math.exp(logBetaWeight(0.25, 0.75, 2, 3))).toBeCloseTo(0.0625 * 0.421875 * 12, 14);
    expect(Math.exp(logBetaWeight(0.5, 0.5, 0.5, 0.5))).toBeCloseTo(0.5 / Math.PI, 15);
  });

  it("keeps its digits for a million trials: at the mean it is √(ab/2πn) but for 1/n", () => {
    const n = 2e6;
    const leading = Math.sqrt((n * 0.25) / (2 * Math.PI));
    const next = 1 - 1 / (4 * n); // Stirling: 1/12n - 2/(12·n/2) = -1/4n
    expect(Math.exp(logBetaWeight(0.5, 0.5, n / 2, n / 2)) / (leading * next)).toBeCloseTo(1, 13);
  });
});
