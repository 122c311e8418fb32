import { describe, expect, it } from "vitest";
import { dropFrom, fellBy } from "../../../app/verdict/dropFrom.ts";

describe("dropFrom", () => {
  it("is a fraction of the earlier force, down positive", () => {
    expect(dropFrom(810, 1, { valueN: 900 }).share).toBe(0.1);
    expect(dropFrom(990, 1, { valueN: 900 }).share).toBe(-0.1);
    expect(dropFrom(569, 1, { valueN: 900 }).share).toBeCloseTo(331 / 900, 15);
  });

  it("adds the relative uncertainties of both where nothing is shared", () => {
    const { standard } = dropFrom(1000, 10, { valueN: 1000, standardUncertaintyN: 10 });
    expect(standard).toBeCloseTo(Math.SQRT2 * 0.01, 14);
  });

  it("loses a wholly common scale error", () => {
    expect(dropFrom(800, 8, { valueN: 1000, standardUncertaintyN: 10, correlation: 1 }).standard).toBeCloseTo(0, 9);
  });

  it.each([0, -5, NaN])("refuses an earlier force of %d", (valueN) => {
    expect(() => dropFrom(1, 1, { valueN })).toThrow(RangeError);
  });
});

describe("fellBy", () => {
  it("takes a border for beyond, to 1 part in 1e12", () => {
    expect([fellBy(0.1 - 1e-15, 0.1), fellBy(0.1 - 1e-9, 0.1), fellBy(0.1, 0.1), fellBy(-0.1, 0.1)]).toEqual([
      true,
      false,
      true,
      false,
    ]);
  });
});
