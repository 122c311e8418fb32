import { describe, expect, it } from "vitest";
import { cusumRunLength, ewmaRunLength } from "../../../../app/trend/control/runLength.ts";
import published from "../../../published/control-chart-constants-rules.json" with { type: "json" };

const { cusum_two_sided: cusum, ewma } = published.average_run_length;

describe("average run lengths", () => {
  // Introduction to Statistical Quality Control, 6th ed., tables 9.3 and 9.10 (from memory; recomputed by integral equations).
  it.each(cusum)("meets the CUSUM with k = $k, h = $h at a shift of $shift", (c) => {
    const got = cusumRunLength(c.k, c.h, c.shift);
    expect(Math.abs(got - c.arl)).toBeLessThan(0.00051);
    expect(Math.abs(got / c.published_from_memory - 1)).toBeLessThan(0.005);
  });

  it.each(ewma)("meets the EWMA with lambda = $lambda, L = $L at a shift of $shift", (c) => {
    const got = ewmaRunLength(c.lambda, c.L, c.shift);
    expect(Math.abs(got - c.arl)).toBeLessThan(0.00051);
    expect(Math.abs(got / c.published_from_memory - 1)).toBeLessThan(0.005);
  });

  it("is 370 for an EWMA of single values with three-sigma limits", () => {
    expect(ewmaRunLength(1, 3, 0)).toBeCloseTo(published.average_run_length.three_sd_limits_in_control, 4);
  });
});
