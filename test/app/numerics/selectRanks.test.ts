import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { selectRanks } from "../../../app/numerics/selectRanks.ts";

describe("selectRanks", () => {
  it("takes what the sorted values hold at each rank, neighbours and repeats too", () => {
    const values = fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 1, maxLength: 50 });
    fc.assert(
      fc.property(values, fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 8 }), (list, shares) => {
        const ranks = shares.map((share) => 1 + Math.floor(share * (list.length - 1)));
        const sorted = Float64Array.from(list).sort();
        expect(selectRanks(Float64Array.from(list), ranks)).toEqual(ranks.map((rank) => sorted[rank - 1]));
      }),
    );
  });

  it.each([0, 4, Number.NaN])("refuses rank %f of three", (rank) => {
    expect(() => selectRanks(Float64Array.of(1, 2, 3), [rank])).toThrow(RangeError);
  });
});
