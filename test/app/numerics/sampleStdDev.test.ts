import { describe, expect, it } from "vitest";
import { sampleStdDev } from "../../../app/numerics/sampleStdDev.ts";
import { strdUnivariate } from "./strdUnivariate.ts";

describe("sampleStdDev", () => {
  it.each(strdUnivariate)("meets the certified standard deviation of NIST $name", ({ data, sd, inexact }) => {
    expect(Math.abs(sampleStdDev(data) / sd - 1)).toBeLessThan(inexact ? 1e-6 : 1e-12);
  });

  it("does not move when every reading shifts by the same offset", () => {
    const readings = Object.freeze([20.5, 20.25, 20.75, 20.5]);
    expect(sampleStdDev(readings.map((v) => v + 2 ** 20))).toBe(sampleStdDev(readings));
  });

  it("is 0, never NaN, for readings that are all equal", () => {
    expect(sampleStdDev([0.1, 0.1, 0.1])).toBe(0);
  });

  it.each([[[]], [[1]], [[1, Number.NaN]]])("refuses %j", (readings) => {
    expect(() => sampleStdDev(readings)).toThrow(RangeError);
  });
});
