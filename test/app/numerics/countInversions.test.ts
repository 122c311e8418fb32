import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countInversions } from "../../../app/numerics/countInversions.ts";

function plainly(values: readonly number[]): number {
  let count = 0;
  for (let i = 0; i < values.length; i += 1) {
    for (let j = i + 1; j < values.length; j += 1) if (values[i]! > values[j]!) count += 1;
  }
  return count;
}

describe("countInversions", () => {
  it("counts as a loop over all pairs does, ties being none, and leaves the values sorted", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -8, max: 8 }), { maxLength: 70 }), (values) => {
        const sorted = Float64Array.from(values);
        expect(countInversions(sorted)).toBe(plainly(values));
        expect(sorted).toEqual(Float64Array.from(values).sort());
      }),
    );
  });

  it("counts every pair of a falling row", () => {
    const n = 3001;
    expect(countInversions(Float64Array.from({ length: n }, (_, i) => -i))).toBe((n * (n - 1)) / 2);
  });
});
