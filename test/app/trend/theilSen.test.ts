import { describe, expect, it } from "vitest";
import { theilSen } from "../../../app/trend/theilSen.ts";
import published from "../../published/trend-tests.json" with { type: "json" };

const cases = published.cases.filter((c) => "slope" in c.expected.recomputed);
const xOf = (c: (typeof cases)[number]) => c.inputs.times ?? c.inputs.values.map((_, i) => i);
const sediment = cases[0]!;

describe("theilSen", () => {
  // Sediment, precipitation, sodium (EPA 530/R-09-007, example 17-7); both ways of the ranks, trend-tests.json.
  it.each(cases)("meets slope and interval of $name", (c) => {
    const got = theilSen(xOf(c), c.inputs.values)!;
    const want = c.expected.recomputed;
    expect(got.slope / want.slope!).toBeCloseTo(1, 12);
    expect(got.low! / want.lower_interpolated!).toBeCloseTo(1, 9);
    expect(got.high! / want.upper_interpolated!).toBeCloseTo(1, 9);
    expect(got.lowRounded! / want.lower_rounded_rank!).toBeCloseTo(1, 9);
    expect(got.highRounded! / want.upper_rounded_rank!).toBeCloseTo(1, 9);
  });

  it("meets the printed slope and interval of the sediment series to half a digit", () => {
    const got = theilSen(xOf(sediment), sediment.inputs.values)!;
    const printed = sediment.expected.published as { slope: number; slope_interval_95_rounded_ranks: number[] };
    expect(Math.abs(got.slope - printed.slope)).toBeLessThan(5e-8);
    expect(Math.abs(got.lowRounded! - printed.slope_interval_95_rounded_ranks[0]!)).toBeLessThan(5e-8);
    expect(Math.abs(got.highRounded! - printed.slope_interval_95_rounded_ranks[1]!)).toBeLessThan(5e-8);
  });

  it("takes the intercept from the medians (EPA example 17-7: -65.97)", () => {
    const sodium = cases.find((c) => c.name.startsWith("sodium"))!;
    const got = theilSen(xOf(sodium), sodium.inputs.values)!;
    expect(Math.abs(got.intercept - sodium.expected.recomputed.intercept!)).toBeLessThan(1e-12 * 66);
  });

  it("gives the same slope by milliseconds since 1970 as by days, to 1e-9", () => {
    const dayMs = 86_400_000;
    const days = sediment.inputs.values.map((_, i) => 20_000 + i * 90.25 + (i % 7) / 24);
    const byDay = theilSen(days, sediment.inputs.values)!;
    const byMs = theilSen(
      days.map((d) => d * dayMs),
      sediment.inputs.values,
    )!;
    expect(Math.abs((byMs.slope * dayMs) / byDay.slope - 1)).toBeLessThan(1e-9);
    expect(Math.abs((byMs.low! * dayMs) / byDay.low! - 1)).toBeLessThan(1e-9);
  });

  it("is not tilted by a quarter of wild values", () => {
    const x = Array.from({ length: 40 }, (_, i) => i);
    const y = x.map((v) => 100 - 0.5 * v + (v % 4 === 1 ? 40 : 0));
    expect(theilSen(x, y)!.slope).toBe(-0.5);
  });

  it("has an interval without end where the pairs are too few for one", () => {
    expect(theilSen([1, 2, 3, 4], [4, 3, 2, 2.5])).toMatchObject({ low: undefined, high: undefined });
  });

  it("has no line where all x are equal, nor for one value", () => {
    expect(theilSen([2, 2, 2], [1, 2, 3])).toBeUndefined();
    expect(theilSen([2], [1])).toBeUndefined();
  });
});
