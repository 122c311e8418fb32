import { describe, expect, it } from "vitest";
import { medianAbsoluteDeviation, normalPerMad } from "../../../app/numerics/medianAbsoluteDeviation.ts";
import { normalQuantile } from "../../../app/numerics/normalQuantile.ts";

describe("medianAbsoluteDeviation", () => {
  it("is the median distance from the median", () => {
    expect(medianAbsoluteDeviation([1, 1, 2, 2, 4, 6, 9])).toBe(1); // distances 1 1 0 0 2 4 7, by hand
  });

  it("does not move when half but one of the readings are spoiled", () => {
    expect(medianAbsoluteDeviation([10, 11, 12, 13, 14, 1e9, -1e9, 1e9, -1e9])).toBe(2);
  });

  it("is scaled to normal noise by one over the upper quartile of the normal distribution", () => {
    expect(normalPerMad).toBeCloseTo(1 / normalQuantile(0.75), 12);
  });

  it.each([[[]], [[Number.NaN]]])("refuses %j", (values) => {
    expect(() => medianAbsoluteDeviation(values)).toThrow(RangeError);
  });
});
