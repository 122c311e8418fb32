import { describe, expect, it } from "vitest";
import { incompleteBeta } from "../../../app/numerics/incompleteBeta.ts";
import { published, worstError } from "./publishedProbability.ts";

const ofXAB = (x: number, a: number, b: number) => incompleteBeta(x, a, b);

describe("incompleteBeta", () => {
  it("meets 60-digit values for a and b from 0.01 to 1000, down to 1e-290, to 1e-12", () => {
    expect(published.incompleteBeta.length).toBe(400);
    expect(worstError(published.incompleteBeta, ofXAB).error).toBeLessThan(1e-12);
  });

  it("adds up to one with its mirror image", () => {
    for (const [x, a, b] of [
      [0.25, 2, 3],
      [0.75, 40, 0.5],
      [0.5, 5e5, 5e5],
    ] as const) {
      expect(incompleteBeta(x, a, b) + incompleteBeta(1 - x, b, a)).toBeCloseTo(1, 14);
    }
  });

  it("is x to the power a where b is 1", () => {
    for (const a of [0.5, 3, 250]) expect(incompleteBeta(0.875, a, 1) / 0.875 ** a).toBeCloseTo(1, 13);
  });

  it("is 0 and 1 at the ends", () => {
    expect([incompleteBeta(0, 2, 3), incompleteBeta(1, 2, 3)]).toEqual([0, 1]);
  });

  it.each([
    [-0.1, 1, 1],
    [1.1, 1, 1],
    [NaN, 1, 1],
    [0.5, 0, 1],
    [0.5, 1, -1],
    [0.5, NaN, 1],
  ])("refuses x = %d, a = %d, b = %d", (x, a, b) => {
    expect(() => incompleteBeta(x, a, b)).toThrow(RangeError);
  });
});
