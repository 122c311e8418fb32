import { describe, expect, it } from "vitest";
import { guardBandN } from "../../../app/verdict/guardBandN.ts";

const width = (rule: Parameters<typeof guardBandN>[0]["rule"], degreesOfFreedom?: number) =>
  guardBandN({ rule, standardUncertaintyN: 100, degreesOfFreedom });

describe("guardBandN", () => {
  // ILAC-G8:09/2019 4.2.2: w = r U, U = k u; ISO 14253-1:2017 (from memory): 1.65 u
  it("is r x k x u", () => {
    expect(width({ rule: "guarded" })).toBe(200);
    expect(width({ rule: "ilacG8", coverageFactor: 3, guardFactor: 0.5 })).toBe(150);
    expect(width({ rule: "iso14253" })).toBeCloseTo(164.5, 9);
    expect(width({ rule: "guarded", guardFactor: -1 })).toBe(-200);
  });

  it("is nothing where the rule knows no band", () => {
    expect([width({ rule: "simple" }), width({ rule: "probability", guardFactor: 2 })]).toEqual([0, 0]);
  });

  it("is wider where the degrees of freedom are few", () => {
    expect(width({ rule: "guarded" }, 4)).toBeGreaterThan(280);
  });
});
