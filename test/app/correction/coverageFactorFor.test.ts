import { describe, expect, it } from "vitest";
import type { Contribution } from "../../../app/correction/Budget.ts";
import { coverageFactorFor } from "../../../app/correction/coverageFactorFor.ts";
import { studentQuantile } from "../../../app/numerics/studentQuantile.ts";

const line = (standardN: number, distribution: Contribution["distribution"]): Contribution => ({
  source: "drift",
  type: "B",
  distribution,
  standardN,
  degreesOfFreedom: Infinity,
  assumed: false,
});

describe("coverageFactorFor", () => {
  it("cuts the degrees of freedom down to a whole number", () => {
    expect(coverageFactorFor([line(1, "normal")], 16.75, 0.99)).toBe(studentQuantile(0.995, 16));
    expect(coverageFactorFor([line(1, "normal")], 5 - 1e-14, 0.95)).toBe(studentQuantile(0.975, 5));
  });

  // JCGM 100:2008 (GUM) 4.3.7 and G.2.2: a rectangle holds 95 % within 0.95 a = 1.645 u
  it("is 0.95 √3 for one rectangle alone", () => {
    expect(coverageFactorFor([line(1, "rectangular")], Infinity, 0.95)).toBeCloseTo(0.95 * Math.sqrt(3), 9);
  });

  it("makes an interval of 95 % of a rectangle and a bell, by counting a fine grid", () => {
    for (const [u, s] of [
      [3, 1],
      [2, 1],
      [1.2, 1],
    ] as const) {
      const k = coverageFactorFor([line(u, "rectangular"), line(s, "normal")], Infinity, 0.95);
      expect(shareWithin(u * Math.sqrt(3), s, k * Math.hypot(u, s))).toBeCloseTo(0.95, 4);
    }
  });

  it("leaves a budget without a dominating rectangle alone", () => {
    const two = [line(1, "rectangular"), line(1, "rectangular")];
    expect(coverageFactorFor(two, Infinity, 0.95)).toBe(studentQuantile(0.975, Infinity));
  });
});

/** Share of (rectangle ± a) + (bell of sigma) within ± h, both cut into equal slices. */
function shareWithin(a: number, sigma: number, h: number): number {
  const slices = 2000;
  let weights = 0;
  let inside = 0;
  for (let i = 0; i < slices; i += 1) {
    const z = -8 + (16 * (i + 0.5)) / slices;
    const w = Math.exp(-0.5 * z * z);
    const [low, high] = [Math.max(-a, -h - sigma * z), Math.min(a, h - sigma * z)];
    weights += w;
    inside += (w * Math.max(0, high - low)) / (2 * a);
  }
  return inside / weights;
}
