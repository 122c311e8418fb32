import { describe, expect, it } from "vitest";
import { normalCdf } from "../../../app/numerics/normalCdf.ts";
import { studentCdf } from "../../../app/numerics/studentCdf.ts";
import { published, worstError } from "./publishedProbability.ts";

describe("studentCdf", () => {
  it("meets 60-digit values from t = -1e200 to 2 and 1 to a million degrees of freedom, to 1e-12", () => {
    expect(published.studentCdf.length).toBeGreaterThan(250);
    expect(worstError(published.studentCdf, studentCdf).error).toBeLessThan(1e-12);
  });

  it("is the normal distribution without limit on the degrees of freedom", () => {
    expect(studentCdf(-1.5, Infinity)).toBe(normalCdf(-1.5));
    expect(studentCdf(-1.5, 1e15)).toBeCloseTo(normalCdf(-1.5), 13);
  });

  it("ends at 0 and 1", () => {
    expect([studentCdf(-Infinity, 3), studentCdf(Infinity, 3), studentCdf(0, 3)]).toEqual([0, 1, 0.5]);
  });

  it.each([
    [NaN, 3],
    [1, 0],
    [1, -2],
    [1, NaN],
  ])("refuses t = %d with %d degrees of freedom", (t, degrees) => {
    expect(() => studentCdf(t, degrees)).toThrow(RangeError);
  });
});
