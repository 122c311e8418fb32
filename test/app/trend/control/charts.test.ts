import { describe, expect, it } from "vitest";
import { cusumChart } from "../../../../app/trend/control/cusumChart.ts";
import { ewmaChart } from "../../../../app/trend/control/ewmaChart.ts";
import { D4_OF_TWO, individualsChart } from "../../../../app/trend/control/individualsChart.ts";
import { D2_OF_TWO, movingRangeSigma } from "../../../../app/trend/control/movingRangeSigma.ts";
import { sampleFactors } from "../../../../app/trend/control/sampleFactors.ts";
import constants from "../../../published/control-chart-constants-rules.json" with { type: "json" };
import cusum from "../../../published/nist-cusum.json" with { type: "json" };
import ewma from "../../../published/nist-ewma.json" with { type: "json" };
import individuals from "../../../published/nist-individuals.json" with { type: "json" };

const near = (got: ArrayLike<number>, want: readonly number[], within: number) => {
  expect(got.length).toBe(want.length);
  for (const [i, v] of want.entries()) expect(Math.abs(got[i]! - v)).toBeLessThan(within);
};

describe("individualsChart", () => {
  // NIST/SEMATECH e-Handbook 6.3.2.2.
  it("meets the e-Handbook's limits", () => {
    const got = individualsChart(individuals.inputs.values);
    const { published, recomputed } = individuals.expected;
    expect(Math.abs(got.upper - published.ucl)).toBeLessThan(5e-5);
    expect(Math.abs(got.lower - published.lcl)).toBeLessThan(5e-5);
    expect(got.upper).toBeCloseTo(recomputed.ucl, 9);
    expect(got.lower).toBeCloseTo(recomputed.lcl, 9);
    expect(got.sigma).toBeCloseTo(recomputed.sd_estimate, 9);
    expect(got.meanMovingRange).toBeCloseTo(recomputed.mean_moving_range, 9);
    expect(got.movingRangeUpper).toBeCloseTo(recomputed.moving_range_ucl_D4_3_267, 9);
    expect(got.signals).toEqual([]);
  });

  it("counts signals from 1, of values and of ranges", () => {
    const got = individualsChart([10, 10.1, 9.9, 10, 10.1, 14, 10, 9.9, 10, 10.1, 9.9, 10]);
    expect(got.signals).toEqual([6]);
    expect(got.movingRangeSignals).toEqual([6, 7]);
  });

  it("refuses one value", () => {
    expect(() => individualsChart([1])).toThrow(RangeError);
    expect(movingRangeSigma([1])).toBeUndefined();
  });
});

describe("ewmaChart", () => {
  const { values, start, sd, lambda, k } = ewma.inputs;
  const options = { lambda, target: start, sigma: sd, width: k };

  // NIST/SEMATECH e-Handbook 6.3.2.4: series and steady limits; start-up factor from textbooks (nist-ewma.json).
  it("meets the e-Handbook's series and steady limits", () => {
    const got = ewmaChart(values, { ...options, limits: "steady" });
    near(got.values, ewma.expected.recomputed.ewma, 1e-9);
    near(got.values, ewma.expected.published.ewma_2_decimals, 0.005000001);
    expect(got.upper[0]).toBeCloseTo(ewma.expected.recomputed.ucl_asymptotic, 9);
    expect(Math.abs(got.upper[19]! - ewma.expected.published.ucl)).toBeLessThan(1e-4);
    expect(Math.abs(got.lower[19]! - ewma.expected.published.lcl)).toBeLessThan(2e-4);
    expect(got.signals).toEqual(ewma.expected.published.signals);
  });

  it("meets the start-up limits point by point", () => {
    const got = ewmaChart(values, options);
    near(
      got.upper.map((v) => v - start),
      ewma.expected.recomputed.exact_half_width_by_point,
      1e-8,
    );
  });

  it.each([0, 1.2, Number.NaN])("refuses lambda %f", (wrong) => {
    expect(() => ewmaChart(values, { ...options, lambda: wrong })).toThrow(RangeError);
  });
});

describe("cusumChart", () => {
  const { group_means: values, target, sd_of_means: sigma, k, h } = cusum.inputs;
  const options = { k: k / sigma, h: h / sigma, target, sigma };

  // NIST/SEMATECH e-Handbook 6.3.2.3; k and h printed in data units.
  it("meets the e-Handbook's sums and signals", () => {
    const got = cusumChart(values, options);
    near(
      got.high.map((v) => v * sigma),
      cusum.expected.recomputed.upper_sum,
      1e-9,
    );
    near(
      got.low.map((v) => v * sigma),
      cusum.expected.recomputed.lower_sum,
      1e-9,
    );
    expect(got.signals).toEqual(cusum.expected.published.signals);
  });

  it("is the same in any unit", () => {
    const scaled = cusumChart(
      values.map((v) => 8 * v),
      { ...options, target: 8 * target, sigma: 8 * sigma },
    );
    expect(scaled.high).toEqual(cusumChart(values, options).high);
  });

  it("refuses a sigma of 0 and an h of 0", () => {
    expect(() => cusumChart(values, { ...options, sigma: 0 })).toThrow(RangeError);
    expect(() => cusumChart(values, { ...options, h: 0 })).toThrow(RangeError);
  });
});

describe("factors", () => {
  // ASTM MNL 7 (2002), table of factors.
  it("has the printed d2 and D4 of two", () => {
    expect(D2_OF_TWO).toBe(constants.constants.published.d2[0]);
    expect(D4_OF_TWO).toBe(constants.constants.published.D4[0]);
    expect(Math.abs(2 / Math.sqrt(Math.PI) - constants.constants.recomputed.d2[0]!)).toBeLessThan(1e-6);
  });

  it.each(constants.constants.n.map((n, i) => ({ n, i })))("meets c4, A3, B3 and B4 of $n", ({ n, i }) => {
    const { published, recomputed } = constants.constants;
    const got = sampleFactors(n);
    for (const [value, name] of [
      [got.c4, "c4"],
      [got.a3, "A3"],
      [got.b3, "B3"],
      [got.b4, "B4"],
    ] as const) {
      expect(Math.abs(value - published[name][i]!)).toBeLessThan(0.0006);
      expect(Math.abs(value - recomputed[name][i]!)).toBeLessThan(1e-5);
    }
  });

  it("refuses samples of one", () => {
    expect(() => sampleFactors(1)).toThrow(RangeError);
  });
});
