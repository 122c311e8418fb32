import { describe, expect, it } from "vitest";
import { chiSquareCdf } from "../../../app/numerics/chiSquareCdf.ts";
import { published, worstError } from "./publishedProbability.ts";

describe("chiSquareCdf", () => {
  it("meets 60-digit values on both sides for 1 to 1001 degrees of freedom to 1e-12", () => {
    expect(published.chiSquareCdf.length).toBe(170);
    expect(worstError(published.chiSquareCdf, chiSquareCdf).error).toBeLessThan(1e-12);
  });

  it("is an exponential distribution with two degrees of freedom", () => {
    expect(chiSquareCdf(100, 2, "above") / Math.exp(-50)).toBeCloseTo(1, 12);
  });

  it("ends at 0 and 1", () => {
    expect([
      chiSquareCdf(0, 3),
      chiSquareCdf(Infinity, 3),
      chiSquareCdf(0, 3, "above"),
      chiSquareCdf(Infinity, 3, "above"),
    ]).toEqual([0, 1, 1, 0]);
  });

  it.each([
    [-1, 3],
    [NaN, 3],
    [1, 0],
  ])("refuses %d with %d degrees of freedom", (value, degrees) => {
    expect(() => chiSquareCdf(value, degrees)).toThrow(RangeError);
  });
});
