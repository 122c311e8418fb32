import { describe, expect, it } from "vitest";
import { erf } from "../../../app/numerics/erf.ts";
import { published, worstError } from "./publishedProbability.ts";

describe("erf", () => {
  it("meets 50-digit values near 0 and far out to 1e-12", () => {
    expect(worstError(published.erf, erf).error).toBeLessThan(1e-12);
  });

  it("is odd, and ends at 1", () => {
    expect([erf(-0.3) + erf(0.3), erf(-2) + erf(2), erf(Infinity), erf(0)]).toEqual([0, 0, 1, 0]);
  });

  it("refuses what is not a number", () => {
    expect(() => erf(NaN)).toThrow(RangeError);
  });
});
