import { describe, expect, it } from "vitest";
import { scaledErfc } from "../../../app/numerics/scaledErfc.ts";

describe("scaledErfc", () => {
  it("is 1 at 0 and falls as 1/(x√π) far out", () => {
    expect(scaledErfc(0)).toBeCloseTo(1, 15);
    for (const x of [1e9, 1e16, 1e300]) expect(scaledErfc(x) * x * Math.sqrt(Math.PI)).toBeCloseTo(1, 14);
    expect(scaledErfc(Infinity)).toBe(0);
  });

  // Abramowitz and Stegun 7.1.23: the asymptotic series, exact to rounding at x = 20 with eight terms
  it("agrees with the asymptotic series at 20", () => {
    let term = 1;
    let sum = 1;
    for (let n = 1; n <= 8; n += 1) {
      term *= -(2 * n - 1) / (2 * 400);
      sum += term;
    }
    expect(scaledErfc(20) / (sum / (20 * Math.sqrt(Math.PI)))).toBeCloseTo(1, 14);
  });

  it.each([-1, NaN])("refuses %d", (x) => {
    expect(() => scaledErfc(x)).toThrow(RangeError);
  });
});
