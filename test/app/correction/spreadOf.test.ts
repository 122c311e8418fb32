import { describe, expect, it } from "vitest";
import type { Contribution } from "../../../app/correction/Budget.ts";
import { spreadOf } from "../../../app/correction/spreadOf.ts";

const line = (
  standardN: number,
  distribution: Contribution["distribution"],
  degreesOfFreedom = Infinity,
): Contribution => ({
  source: "drift",
  type: "B",
  distribution,
  standardN,
  degreesOfFreedom,
  assumed: false,
});

describe("spreadOf", () => {
  it("keeps the two widest rectangles and pools the rest by second and fourth cumulant", () => {
    const spread = spreadOf([
      line(3, "rectangular"),
      line(5, "rectangular"),
      line(4, "rectangular"),
      line(2, "triangular"),
      line(1, "normal"),
    ]);
    expect(spread.rectanglesN).toEqual([5 * Math.sqrt(3), 4 * Math.sqrt(3)]);
    expect(spread.restVarianceN2).toBe(9 + 4 + 1);
    // a rectangle's fourth cumulant is -2a⁴/15 = -1.2 u⁴, a triangle's half of that for its variance
    expect(spread.restCumulantN4).toBeCloseTo(-1.2 * 81 - 0.6 * 16, 9);
  });

  it("keeps the t of few degrees of freedom however narrow, and pools one of many", () => {
    const spread = spreadOf([line(10, "normal"), line(0.1, "t", 1), line(3, "t", 30)]);
    expect(spread.ts).toEqual([{ scaleN: 0.1, degreesOfFreedom: 1 }]);
    const variance = (9 * 30) / 28; // of a scaled t
    expect(spread.restVarianceN2).toBeCloseTo(100 + variance, 12);
    expect(spread.restCumulantN4).toBeCloseTo((6 / 26) * variance ** 2, 12);
  });

  it("keeps two t where both matter", () => {
    expect(spreadOf([line(1, "t", 3), line(1, "t", 6)]).ts).toHaveLength(2);
  });

  it("does not change what it is given", () => {
    const lines = Object.freeze([line(1, "t", 9), line(2, "t", 3), line(1, "rectangular")]);
    expect(spreadOf(lines)).toEqual(spreadOf(lines.toReversed()));
  });
});
