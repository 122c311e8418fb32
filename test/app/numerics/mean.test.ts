import { describe, expect, it } from "vitest";
import { mean } from "../../../app/numerics/mean.ts";
import { strdUnivariate } from "./strdUnivariate.ts";

describe("mean", () => {
  it.each(strdUnivariate)("meets the certified mean of NIST $name", ({ data, mean: certified }) => {
    expect(Math.abs(mean(data) / certified - 1)).toBeLessThan(1e-14);
  });

  it("moves by just the offset when all values shift", () => {
    expect(mean([20.5, 20.25, 20.75].map((v) => v + 2 ** 30))).toBe(20.5 + 2 ** 30);
  });

  it.each([[[]], [[1, Number.NaN]], [[Number.POSITIVE_INFINITY]]])("refuses %j", (values) => {
    expect(() => mean(values)).toThrow(RangeError);
  });
});
