import { describe, expect, it } from "vitest";
import { findSpikes } from "../../../../app/cycle/read/spikes.ts";
import published from "../../../published/peak-detection.json" with { type: "json" };

const find = (values: readonly number[], sigma: number, step = 0) =>
  findSpikes(Float64Array.from(values), 0, values.length, sigma, step);

describe("spikes", () => {
  // The positions an outlier filter by running medians replaces, as documented; we reject them as samples instead.
  it.each(published.hampel.cases)("are where the documented filter finds them: $name", ({ values, replaced }) => {
    expect(find(values, 0.02)).toEqual(replaced);
  });

  it("are no crest of a ring of five and more readings a period", () => {
    for (const period of [5, 6, 8, 16]) {
      const ring = Array.from(
        { length: 120 },
        (_, i) => 10_000 + 3_000 * Math.exp(-i / 40) * Math.cos((2 * Math.PI * i) / period + 0.3),
      );
      expect([period, find(ring, 1)]).toEqual([period, []]);
    }
  });

  it("are no pair of readings", () => {
    expect(find([0, 0, 0, 0, 900, 900, 0, 0, 0, 0], 1)).toEqual([]);
  });

  it("are seen beside a step, beside a missing reading, and downwards", () => {
    expect(find([0, 0, 0, 0, 10_000, 10_000, 17_000, 10_000, 10_000, 10_000], 5)).toEqual([6]);
    expect(find([5, 5, 5, Number.NaN, 900, 5, 5, 5], 1)).toEqual([4]);
    expect(find([900, 900, 900, 0, 900, 900, 900], 1)).toEqual([3]);
  });

  it("are none among the first and the last reading, which have no neighbour", () => {
    expect(find([900, 0, 0, 0, 0, 900], 1)).toEqual([]);
  });
});
