import { describe, expect, it } from "vitest";
import { curveUncertainty } from "../../../app/correction/curveUncertainty.ts";

const proved = Object.freeze([
  { atN: 2_000, relative: 0.004 },
  { atN: 10_000, relative: 0.002 },
  { atN: 20_000, relative: 0.003 },
]);

describe("curveUncertainty", () => {
  it("runs straight between proved loads and meets them", () => {
    expect(proved.map(({ atN }) => curveUncertainty(proved, atN))).toEqual([0.004, 0.002, 0.003]);
    expect(curveUncertainty(proved, 6_000)).toBeCloseTo(0.003, 12);
    expect(curveUncertainty(proved, 15_000)).toBeCloseTo(0.0025, 12);
  });

  it("keeps the newtons below the least load and the share above the greatest", () => {
    expect(curveUncertainty(proved, 1_000)! * 1_000).toBeCloseTo(8, 12);
    expect(curveUncertainty(proved, 90_000)).toBe(0.003);
  });

  it("does not guess", () => {
    expect(curveUncertainty([], 5_000)).toBeUndefined();
    expect(curveUncertainty(proved, 0)).toBeUndefined();
  });
});
