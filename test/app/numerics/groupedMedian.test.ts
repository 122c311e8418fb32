import { describe, expect, it } from "vitest";
import { groupedMedian } from "../../../app/numerics/groupedMedian.ts";

describe("groupedMedian", () => {
  it("meets the textbook's grouped-data formula, worked by hand", () => {
    // 2 below, 5 in the middle step of 10 about 20, 3 above: 15 + 10 * (5 - 2) / 5 = 21 (constructed example).
    expect(groupedMedian([10, 10, 20, 20, 20, 20, 20, 30, 30, 30], 10)).toBe(21);
  });

  it("finds the level between two figures that alternate", () => {
    expect(groupedMedian([10, 20, 10, 20], 10)).toBe(15);
  });

  it("is the figure itself when all are equal", () => {
    expect(groupedMedian([20, 20, 20], 10)).toBe(20);
  });

  it("takes figures that differ in their last bits for the same step", () => {
    expect(groupedMedian([0.3, 0.1 + 0.2, 0.3], 0.1)).toBeCloseTo(0.3, 12);
  });

  it.each([
    [[], 1],
    [[1], 0],
    [[1], Number.NaN],
    [[Number.NaN], 1],
  ])("refuses %j with step %d", (values, step) => {
    expect(() => groupedMedian(values, step)).toThrow(RangeError);
  });
});
