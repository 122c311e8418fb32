import { describe, expect, it } from "vitest";
import { noncentralStudentCdf } from "../../../app/numerics/noncentralStudentCdf.ts";
import { normalCdf } from "../../../app/numerics/normalCdf.ts";
import { studentCdf } from "../../../app/numerics/studentCdf.ts";

describe("noncentralStudentCdf", () => {
  it.each([1, 2, 7, 42, 300])("is Student's own distribution without a shift, %i degrees of freedom", (freedom) => {
    for (const t of [-4, -0.5, 0, 1, 3.2]) {
      expect(Math.abs(noncentralStudentCdf(t, freedom, 0) - studentCdf(t, freedom))).toBeLessThan(1e-10);
    }
  });

  it("is the chance of a negative normal value at t = 0", () => {
    for (const delta of [-2, 0.3, 1.5]) {
      expect(Math.abs(noncentralStudentCdf(0, 9, delta) - normalCdf(-delta))).toBeLessThan(1e-12);
    }
  });

  // SciPy 1.17, scipy.stats.nct, a general-purpose library.
  it.each([
    [2, 5, 1, 0.7780746626],
    [9.014, 7, 4.652, 0.9499877892],
    [-1, 3, 0.5, 0.0921212098],
  ])("meets a general-purpose library: t = %f, %i degrees of freedom, shift %f", (t, freedom, delta, want) => {
    expect(Math.abs(noncentralStudentCdf(t, freedom, delta) - want)).toBeLessThan(1e-9);
  });

  it("refuses degrees of freedom below 1", () => {
    expect(() => noncentralStudentCdf(1, 0.5, 0)).toThrow(RangeError);
  });
});
