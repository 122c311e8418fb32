import { describe, expect, it } from "vitest";
import { autocorrelation } from "../../../app/numerics/autocorrelation.ts";
import runs from "../../published/nist-runs-autocorrelation.json" with { type: "json" };
import { strdUnivariate } from "./strdUnivariate.ts";

describe("autocorrelation", () => {
  it.each(strdUnivariate)("meets the certified lag-1 value of NIST $name", ({ data, r1, inexact }) => {
    expect(Math.abs(autocorrelation(data, 1)[0]! - r1)).toBeLessThan(inexact ? 1e-6 : 1e-10);
  });

  it("meets lags 1 to 5 of NIST's beam deflections (e-Handbook 1.3.5.12), recomputed to 1e-9", () => {
    const lew = strdUnivariate.find((d) => d.name === "Lew")!.data;
    const expected = runs.expected.recomputed.autocorrelation_lags_1_to_5;
    autocorrelation(lew, 5).forEach((r, i) => {
      expect(Math.abs(r - expected[i]!)).toBeLessThan(1e-9);
    });
  });

  it.each([
    [[1], 1],
    [[1, 2], 2],
    [[1, 2], 0],
    [[2, 2, 2], 1],
    [[1, Number.NaN, 2], 1],
  ])("refuses %j at %i lags", (values, lags) => {
    expect(() => autocorrelation(values, lags)).toThrow(RangeError);
  });
});
