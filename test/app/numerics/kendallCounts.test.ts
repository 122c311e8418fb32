import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { kendallCounts } from "../../../app/numerics/kendallCounts.ts";

function plainly(x: readonly number[], y: readonly number[]) {
  const found = { s: 0, tiesX: 0, tiesY: 0, tiedInBoth: 0 };
  for (let i = 0; i < x.length; i += 1) {
    for (let j = i + 1; j < x.length; j += 1) {
      const dx = Math.sign(x[j]! - x[i]!);
      const dy = Math.sign(y[j]! - y[i]!);
      found.s += dx * dy;
      if (dx === 0) found.tiesX += 1;
      if (dy === 0) found.tiesY += 1;
      if (dx === 0 && dy === 0) found.tiedInBoth += 1;
    }
  }
  return found;
}

const pairs = fc.array(fc.tuple(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 6 })), {
  minLength: 1,
  maxLength: 60,
});

describe("kendallCounts", () => {
  it("agrees with a loop over all pairs, ties in x, in y and in both", () => {
    fc.assert(
      fc.property(pairs, (points) => {
        const x = points.map((p) => p[0]);
        const y = points.map((p) => p[1]);
        const got = kendallCounts(x, y);
        expect({
          s: got.s,
          tiesX: got.tiesX.pairs,
          tiesY: got.tiesY.pairs,
          tiedInBoth: got.tiedInBoth,
        }).toEqual(plainly(x, y));
      }),
    );
  });

  it("names the sizes of tied groups", () => {
    const got = kendallCounts([1, 2, 2, 3, 3, 3], [5, 5, 1, 7, 7, 7]);
    expect(got.tiesX.sizes).toEqual([2, 3]);
    expect(got.tiesY.sizes).toEqual([2, 3]);
  });

  it.each([
    [[], []],
    [[1, 2], [1]],
    [
      [1, Number.NaN],
      [1, 2],
    ],
  ])("refuses %j and %j", (x, y) => {
    expect(() => kendallCounts(x, y)).toThrow(RangeError);
  });
});
