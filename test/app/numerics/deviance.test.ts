import { describe, expect, it } from "vitest";
import { deviance } from "../../../app/numerics/deviance.ts";

describe("deviance", () => {
  it("is x ln(x/m) + m - x far from the mean", () => {
    expect(deviance(8, 2)).toBeCloseTo(8 * Math.log(4) - 6, 14);
  });

  it("keeps its digits next to the mean, where it is (x - m)²/2m to first order", () => {
    // third order: d²/2m - d³/6m² with d = 1, m = 1e8
    expect(deviance(1e8 + 1, 1e8) / (0.5e-8 - 1e-16 / 6)).toBeCloseTo(1, 13);
  });

  it("is 0 at the mean", () => {
    expect(deviance(3.5, 3.5)).toBe(0);
  });

  it("changes from series to logarithm without a step", () => {
    const m = 9;
    const border = (m * 1.1) / 0.9;
    expect(deviance(border * (1 - 1e-12), m)).toBeCloseTo(deviance(border * (1 + 1e-12), m), 10);
  });
});
