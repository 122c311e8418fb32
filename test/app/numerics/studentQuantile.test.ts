import { describe, expect, it } from "vitest";
import { studentQuantile } from "../../../app/numerics/studentQuantile.ts";
import gum from "../../published/gum-annex-examples.json" with { type: "json" };
import { published, worstError } from "./publishedProbability.ts";

// JCGM 100:2008 (GUM) table G.2: computed in the set of published values, eight rows compared from memory
const tableG2 = gum.cases.find((c) => c.name.startsWith("G.2"))!;
const normalFractions = [0.682689492137086, 0.9, 0.95, 0.954499736103642, 0.99, 0.99730020393674];

describe("studentQuantile", () => {
  it("meets 60-digit values for p from 1e-250 to 0.99865 and 1 to a million degrees of freedom, to 1e-12", () => {
    expect(published.studentQuantile.length).toBeGreaterThan(300);
    expect(worstError(published.studentQuantile, studentQuantile).error).toBeLessThan(1e-12);
  });

  it.each(Object.entries(tableG2.t_by_degrees_of_freedom!))(
    "meets table G.2 of the GUM at %s degrees of freedom",
    (degrees, row) => {
      const freedom = degrees === "infinity" ? Infinity : Number(degrees);
      for (const [i, printed] of row.entries()) {
        const halfDigit = printed >= 100 ? 0.05 : freedom === Infinity && i !== 2 ? 0.0005 : 0.005;
        expect(Math.abs(studentQuantile(0.5 + normalFractions[i]! / 2, freedom) - printed)).toBeLessThanOrEqual(
          halfDigit + 1e-9,
        );
      }
    },
  );

  it("finds the ends of very heavy tails", () => {
    expect(studentQuantile(0.75, 1)).toBeCloseTo(1, 13); // the Cauchy distribution's quartile
    expect(studentQuantile(1e-300, 1) / -(1e300 / Math.PI)).toBeCloseTo(1, 12);
  });

  it.each([
    [0, 3],
    [1, 3],
    [NaN, 3],
    [0.9, 0],
    [0.9, NaN],
  ])("refuses p = %d with %d degrees of freedom", (p, degrees) => {
    expect(() => studentQuantile(p, degrees)).toThrow(RangeError);
  });
});
