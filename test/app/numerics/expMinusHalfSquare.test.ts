import { describe, expect, it } from "vitest";
import { expMinusHalfSquare } from "../../../app/numerics/expMinusHalfSquare.ts";

describe("expMinusHalfSquare", () => {
  it("is exp of the exact half square where that can be written down", () => {
    for (const z of [0, 0.5, 1, 6.25, 20, 37.5])
      expect(expMinusHalfSquare(z) / Math.exp(-0.5 * z * z)).toBeCloseTo(1, 15);
  });

  // exp(-(36 + 2^-40)^2 / 2) over exp(-36^2 / 2) is exp(-36 * 2^-40) but for 2^-81: the split must keep it
  it("keeps digits that rounding the square would lose", () => {
    const ratio = expMinusHalfSquare(36 + 2 ** -40) / expMinusHalfSquare(36);
    expect(Math.abs(ratio - Math.exp(-36 * 2 ** -40))).toBeLessThan(4e-16);
  });

  it("is even, and 0 far out", () => {
    expect([
      expMinusHalfSquare(-2.3) - expMinusHalfSquare(2.3),
      expMinusHalfSquare(Infinity),
      expMinusHalfSquare(-41),
    ]).toEqual([0, 0, 0]);
  });
});
