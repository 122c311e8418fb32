import { describe, expect, it } from "vitest";
import { solveLinear } from "../../../app/numerics/solveLinear.ts";

describe("solveLinear", () => {
  it("solves a system whose first pivot is 0", () => {
    const matrix = Object.freeze([
      [0, 2, 1],
      [1, 1, 1],
      [2, 0, 3],
    ]);
    expect(solveLinear(matrix, [7, 6, 11])).toEqual([1, 2, 3]);
  });

  // The Hilbert matrix of order 5: its inverse is known in whole numbers (first row 25, -300, 1050, -1400, 630).
  it("meets the inverse of the Hilbert matrix", () => {
    const hilbert = Array.from({ length: 5 }, (_, i) => Array.from({ length: 5 }, (_, j) => 1 / (i + j + 1)));
    const got = solveLinear(hilbert, [1, 0, 0, 0, 0]);
    for (const [i, want] of [25, -300, 1050, -1400, 630].entries()) expect(got[i]! / want).toBeCloseTo(1, 9);
  });

  it("refuses dependent rows and shapes that do not fit", () => {
    const dependent = [
      [1, 2],
      [2, 4],
    ];
    expect(() => solveLinear(dependent, [1, 2])).toThrow(RangeError);
    expect(() => solveLinear([[1, 2]], [1, 2])).toThrow(RangeError);
  });
});
