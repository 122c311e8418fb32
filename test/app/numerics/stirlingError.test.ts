import { describe, expect, it } from "vitest";
import { stirlingError } from "../../../app/numerics/stirlingError.ts";

/** ln Γ(x) rebuilt from it. */
const logGamma = (x: number) => (x - 0.5) * Math.log(x) - x + 0.5 * Math.log(2 * Math.PI) + stirlingError(x);

describe("stirlingError", () => {
  it("turns Stirling's formula into factorials", () => {
    let factorial = 1;
    for (let n = 1; n <= 20; n += 1) {
      expect(Math.abs(Math.exp(logGamma(n)) / factorial - 1)).toBeLessThan(1e-13);
      factorial *= n;
    }
  });

  it("meets Γ(1/2) = √π", () => {
    expect(Math.exp(logGamma(0.5)) / Math.sqrt(Math.PI)).toBeCloseTo(1, 14);
  });

  it.each([0, -1, NaN])("refuses %d", (x) => {
    expect(() => stirlingError(x)).toThrow(RangeError);
  });
});
