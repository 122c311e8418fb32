import { describe, expect, it } from "vitest";
import { findRoot } from "../../../app/numerics/findRoot.ts";

describe("findRoot", () => {
  it.each([
    ["the root of 2", (x: number) => x * x - 2, 0, 2, Math.SQRT2, 14],
    ["the cosine's zero", Math.cos, 1, 2, Math.PI / 2, 14],
    ["a zero in a very flat curve", (x: number) => (x - 1) ** 9, -3, 2.5, 1, 1],
    ["a zero at an end", (x: number) => x, 0, 5, 0, 14],
    ["a fall as well as a rise", (x: number) => 2 - x * x, 0, 2, Math.SQRT2, 14],
    ["ends given the wrong way round", (x: number) => x - 3, 10, -10, 3, 14],
  ])("finds %s", (_, f, a, b, root, digits) => {
    expect(findRoot(f, a, b)).toBeCloseTo(root, digits);
  });

  it("needs few steps for a smooth curve", () => {
    let calls = 0;
    const counted = (x: number) => {
      calls += 1;
      return Math.exp(x) - 5;
    };
    findRoot(counted, 0, 10);
    expect(calls).toBeLessThan(40);
  });

  it("refuses a stretch without a change of sign", () => {
    expect(() => findRoot((x) => x * x + 1, -1, 1)).toThrow(RangeError);
    expect(() => findRoot(() => NaN, -1, 1)).toThrow(RangeError);
  });
});
