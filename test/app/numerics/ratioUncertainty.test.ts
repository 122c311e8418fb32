import { describe, expect, it } from "vitest";
import { ratioUncertainty } from "../../../app/numerics/ratioUncertainty.ts";
import gum from "../../published/gum-annex-examples.json" with { type: "json" };

describe("ratioUncertainty", () => {
  // JCGM 100:2008 (GUM) annex H.2: the impedance Z = V/I from correlated means of V and I
  const { inputs, expected } = gum.cases.find((c) => c.name.startsWith("H.2"))!;
  const { V, I_mA } = inputs as { V: number[]; I_mA: number[] };
  const { recomputed, published } = expected as {
    recomputed: { Z: number[]; r: number[] };
    published: {
      Z: number[];
      means: { V: number; I_mA: number };
      sd_of_means: { V: number; I_mA: number };
      r: { V_I: number };
    };
  };
  const mean = (a: number[]) => a.reduce((s, v) => s + v, 0) / a.length;
  const sdOfMean = (a: number[]) =>
    Math.sqrt(a.reduce((s, v) => s + (v - mean(a)) ** 2, 0) / (a.length * (a.length - 1)));

  it("meets the GUM's recomputed 0.236336 from the readings themselves", () => {
    const u = ratioUncertainty(mean(V), sdOfMean(V), mean(I_mA) / 1000, sdOfMean(I_mA) / 1000, recomputed.r[0]!);
    expect(Math.abs(u / recomputed.Z[1]! - 1)).toBeLessThan(1e-8);
  });

  it("meets the GUM's printed 0.236 from its printed, rounded figures", () => {
    const { means, sd_of_means, r } = published;
    const u = ratioUncertainty(means.V, sd_of_means.V, means.I_mA / 1000, sd_of_means.I_mA / 1000, r.V_I);
    expect(Math.abs(u - published.Z[1]!)).toBeLessThan(0.002); // two printed digits go in
  });

  it("vanishes where both share one relative error", () => {
    expect(ratioUncertainty(7, 0.07, 9, 0.09, 1)).toBeLessThan(1e-9);
  });

  it("does not turn rounding below zero into something that is not a number", () => {
    for (let b = 1; b < 200; b += 1)
      expect(ratioUncertainty(b * 0.7, b * 0.07, b, b * 0.1, 1)).toBeGreaterThanOrEqual(0);
  });

  it.each([
    [1, 1, 0, 1, 0],
    [1, -1, 1, 1, 0],
    [1, 1, 1, NaN, 0],
    [1, 1, 1, 1, 1.1],
    [1, 1, 1, 1, NaN],
  ])("refuses %d ± %d over %d ± %d with correlation %d", (a, uA, b, uB, r) => {
    expect(() => ratioUncertainty(a, uA, b, uB, r)).toThrow(RangeError);
  });
});
