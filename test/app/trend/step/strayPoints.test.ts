import { describe, expect, it } from "vitest";
import { neighbourScatter } from "../../../../app/trend/step/neighbourScatter.ts";
import { strayPoints } from "../../../../app/trend/step/strayPoints.ts";
import { seededNormal } from "../../../support/seededNormal.ts";

describe("strayPoints", () => {
  const quiet = Object.freeze([18_000, 18_060, 17_950, 18_020, 17_980, 18_040, 17_990, 18_010]);

  it("finds one value off with the next one back", () => {
    expect(strayPoints(quiet.map((v, i) => (i === 4 ? v - 2_000 : v)))).toEqual([4]);
  });

  it("takes neither the first nor the last value, nor two in a row", () => {
    expect(strayPoints(quiet.map((v, i) => (i === 0 || i === 7 ? v - 2_000 : v)))).toEqual([]);
    expect(strayPoints(quiet.map((v, i) => (i === 4 || i === 5 ? v - 2_000 : v)))).toEqual([]);
  });

  it("leaves a step and a slope alone", () => {
    expect(strayPoints(quiet.map((v, i) => (i >= 4 ? v - 2_000 : v)))).toEqual([]);
    expect(strayPoints(quiet.map((v, i) => v - 700 * i))).toEqual([]);
  });

  it("names hardly any of normal values: under 2 % of series of forty", () => {
    const normal = seededNormal(31);
    let named = 0;
    for (let run = 0; run < 500; run += 1) {
      if (strayPoints(Float64Array.from({ length: 40 }, normal)).length > 0) named += 1;
    }
    expect(named).toBeLessThan(10);
  });
});

describe("neighbourScatter", () => {
  it("estimates the spread of normal values under a slope", () => {
    const normal = seededNormal(32);
    const values = Float64Array.from({ length: 4000 }, (_, i) => 2 * normal() - 0.01 * i);
    expect(neighbourScatter(values)).toBeCloseTo(2, 0);
  });

  it("is not 0 for a coarse gauge that mostly shows the same, and refuses one value", () => {
    expect(neighbourScatter([5, 5, 5, 5, 6, 5, 5])).toBeGreaterThan(0);
    expect(() => neighbourScatter([5])).toThrow(RangeError);
  });
});
