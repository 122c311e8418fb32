import { describe, expect, it } from "vitest";
import { median } from "../../../app/numerics/median.ts";
import { quantile } from "../../../app/numerics/quantile.ts";

describe("quantile", () => {
  it("interpolates between neighbours by position (n - 1) p: definition 7 of Hyndman and Fan, by hand", () => {
    expect(quantile([15, 20, 35, 40, 50], 0.4)).toBeCloseTo(29, 12);
    expect(quantile([1, 2, 3, 4], 0.25)).toBe(1.75);
  });

  it("has least, median and greatest at 0, 1/2 and 1", () => {
    const values = Object.freeze([9, 4, 7, 1]);
    expect([quantile(values, 0), quantile(values, 0.5), quantile(values, 1)]).toEqual([1, median(values), 9]);
  });

  it.each([
    [[], 0.5],
    [[1], -0.1],
    [[1], 1.1],
    [[1, Number.NaN], 0.5],
  ])("refuses %j at %d", (values, p) => {
    expect(() => quantile(values, p)).toThrow(RangeError);
  });
});
