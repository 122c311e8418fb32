import { describe, expect, it } from "vitest";
import { partialSums } from "../../../../app/trend/step/partialSums.ts";
import { pettitt } from "../../../../app/trend/step/pettitt.ts";
import published from "../../../published/change-point-tests.json" with { type: "json" };

const [forty, river] = published.cases;

describe("pettitt", () => {
  // Applied Statistics 28 (1979) 126, example; Biometrika 65 (1978) 243 (data): change-point-tests.json.
  it("meets K, place and p of the 40-point series", () => {
    const got = pettitt(forty!.inputs.values);
    expect(got).toMatchObject({ k: 232, u: -232, index: 17 });
    expect(Math.abs(got.p - forty!.expected.recomputed.p_approximate!)).toBeLessThan(1e-12);
    expect(Math.abs(got.p - forty!.expected.published.p_in_vignette!)).toBeLessThan(5e-6);
  });

  it("meets K, place and p of the river volumes", () => {
    const got = pettitt(river!.inputs.values);
    expect(got).toMatchObject({ k: river!.expected.recomputed.pettitt_K, index: 28 });
    expect(got.p / river!.expected.recomputed.pettitt_p_approximate!).toBeCloseTo(1, 9);
  });

  it("takes the first of several places, and counts ties as half", () => {
    expect(pettitt([1, 1, 1, 1])).toMatchObject({ k: 0, index: 1, p: 1 });
    expect(pettitt([1, 1, 2, 2])).toMatchObject({ k: 4, index: 2 });
  });

  it("refuses one value", () => {
    expect(() => pettitt([1])).toThrow(RangeError);
  });
});

describe("partialSums", () => {
  it("meets range, U and homogeneity tests of the river volumes, printed and recomputed", () => {
    const got = partialSums(river!.inputs.values)!;
    const { recomputed, published: printed } = river!.expected;
    expect(got).toMatchObject({ index: 28, homogeneityIndex: 28 });
    expect(got.rangeTest / recomputed.range_test!).toBeCloseTo(1, 12);
    expect(got.u / recomputed.U_test!).toBeCloseTo(1, 12);
    expect(got.homogeneity / recomputed.homogeneity_T!).toBeCloseTo(1, 12);
    expect(Math.abs(got.rangeTest - printed.range_test_R_over_sqrt_n!)).toBeLessThan(0.00005);
    expect(Math.abs(got.u - printed.U_test!)).toBeLessThan(0.00005);
    expect(Math.abs(got.homogeneity - printed.homogeneity_T!)).toBeLessThan(0.0005);
  });

  it("has nothing to say of equal values, and refuses two", () => {
    expect(partialSums([3, 3, 3])).toBeUndefined();
    expect(() => partialSums([3, 4])).toThrow(RangeError);
  });
});
