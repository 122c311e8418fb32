import { describe, expect, it } from "vitest";
import { fCdf } from "../../../app/numerics/fCdf.ts";
import { studentCdf } from "../../../app/numerics/studentCdf.ts";
import { published, worstError } from "./publishedProbability.ts";

describe("fCdf", () => {
  it("meets 60-digit values for 1 to 5000 degrees of freedom to 1e-12", () => {
    expect(published.fCdf.length).toBeGreaterThan(100);
    expect(worstError(published.fCdf, fCdf).error).toBeLessThan(1e-12);
  });

  it("is the square of Student's t with one degree of freedom above", () => {
    expect(fCdf(2.5 ** 2, 1, 7)).toBeCloseTo(1 - 2 * studentCdf(-2.5, 7), 14);
  });

  it("gives a small upper tail by the inverse ratio", () => {
    // t = 40 with 20 degrees of freedom, both tails: F = 1600
    expect(fCdf(1 / 1600, 20, 1) / (2 * studentCdf(-40, 20))).toBeCloseTo(1, 12);
  });

  it("ends at 0 and 1", () => {
    expect([fCdf(0, 2, 3), fCdf(Infinity, 2, 3)]).toEqual([0, 1]);
  });

  it.each([
    [-1, 2, 3],
    [NaN, 2, 3],
    [1, 0, 3],
    [1, 2, -3],
  ])("refuses F = %d with %d and %d degrees of freedom", (f, above, below) => {
    expect(() => fCdf(f, above, below)).toThrow(RangeError);
  });
});
