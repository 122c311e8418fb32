import { describe, expect, it } from "vitest";
import { median, medianInPlace } from "../../../app/numerics/median.ts";
import { selectInPlace } from "../../../app/numerics/selectInPlace.ts";
import { strdUnivariate } from "./strdUnivariate.ts";

describe("median", () => {
  it("meets the e-Handbook's rule for odd and even counts", () => {
    expect(median([5, 1, 3])).toBe(3);
    expect(median([5, 1, 3, 4])).toBe(3.5);
    expect(median([7])).toBe(7);
  });

  it("is what a full sort gives, on NIST's data with their many equal readings", () => {
    for (const { data } of strdUnivariate) {
      const sorted = [...data].sort((a, b) => a - b);
      const half = sorted.length >> 1;
      const expected = sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
      expect(median(data)).toBeCloseTo(expected, 12);
    }
  });

  it("leaves its input as it is, and takes only the leading values in place", () => {
    const values = Object.freeze([3, 1, 2]);
    expect(median(values)).toBe(2);
    expect(medianInPlace(Float64Array.of(3, 1, 2, 99, 99), 3)).toBe(2);
  });

  it.each([[[]], [[1, Number.NaN]], [[Number.POSITIVE_INFINITY, 1]]])("refuses %j", (values) => {
    expect(() => median(values)).toThrow(RangeError);
  });
});

describe("selectInPlace", () => {
  it("puts every rank where a sort would, for sorted, reversed and equal values", () => {
    const shapes = [
      (i: number) => i,
      (i: number) => -i,
      () => 1,
      (i: number) => (i * 7919) % 13,
      (i: number) => Math.sin(i),
    ];
    for (const shape of shapes) {
      const values = Array.from({ length: 57 }, (_, i) => shape(i));
      const sorted = [...values].sort((a, b) => a - b);
      for (let k = 0; k < 57; k += 1) expect(selectInPlace(Float64Array.from(values), k)).toBe(sorted[k]);
    }
  });

  it("refuses a rank outside the values", () => {
    expect(() => selectInPlace(Float64Array.of(1, 2), 2)).toThrow(RangeError);
    expect(() => selectInPlace(Float64Array.of(1, 2), -1)).toThrow(RangeError);
  });
});
