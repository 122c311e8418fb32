import { describe, expect, it } from "vitest";
import { lateOverEarly } from "../../../app/trend/lateOverEarly.ts";

describe("the last third over the first", () => {
  it("compares medians, so one stray value changes nothing", () => {
    expect(lateOverEarly(Float64Array.of(0.01, 0.01, 0.5, 0.02, 0.02, 0.02, 0.03, 0.03, 9))).toBeCloseTo(3, 12);
  });

  it("is not known with fewer than six", () => {
    expect(lateOverEarly(Float64Array.of(0.01, 0.01, 0.02, 0.03, 0.03))).toBeUndefined();
  });

  it("is not known over what a gauge cannot show, down to the smallest number there is", () => {
    for (const nothing of [0, 1e-323, 1e-15, 9e-7]) {
      expect(lateOverEarly(Float64Array.of(nothing, nothing, 0.01, 0.01, 0.02, 0.02))).toBeUndefined();
    }
    expect(lateOverEarly(Float64Array.of(2e-6, 2e-6, 0.01, 0.01, 4e-6, 4e-6))).toBeCloseTo(2, 12);
  });
});
