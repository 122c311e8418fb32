import { describe, expect, it } from "vitest";
import { turningPoints } from "../../../app/numerics/turningPoints.ts";
import published from "../../published/peak-detection.json" with { type: "json" };

const crests = (values: readonly number[], least: number) =>
  turningPoints(values, 0, values.length, least).filter((_, i) => i % 2 === 0);
const small = (name: string) => published.small_cases.find((c) => c.name === name)!;

describe("turningPoints", () => {
  // Maxima and their prominences as a general-purpose signal library documents them; source in the file.
  it.each(["flat top gives the middle (rounded down)", "even flat top", "flat to the end is no peak"])(
    "finds: %s",
    (name) => {
      expect(crests(small(name).values, 0)).toEqual(small(name).peaks);
    },
  );

  it("keeps maxima whose prominence exceeds the least, as published", () => {
    const { values, peaks, prominences } = small("prominence");
    expect(crests(values, 0.999)).toEqual(peaks);
    for (const least of prominences!)
      expect(crests(values, least)).toEqual(peaks!.filter((_, i) => prominences![i]! > least));
  });

  it("finds the three cycles with dips", () => {
    const { values, peaks } = small("three cycles with dips");
    expect(crests(values, 5)).toEqual(peaks);
  });

  it("finds the documented crests of the formula wave, and drops them as the least passes their prominence", () => {
    const wave = Array.from({ length: 1000 }, (_, i) => {
      const t = (6 * Math.PI * i) / 999;
      return Math.sin(t) + 0.6 * Math.sin(2.6 * t);
    });
    const { peaks, prominences } = published.formula_wave.expected;
    expect(crests(wave, 0)).toEqual(peaks);
    // The first reading stands for a trough of any depth, so the first crest is not measured against it.
    const later = (found: readonly number[]) => found.filter((at) => at > peaks[0]!);
    for (const least of [0.3, 0.48, 1.3, 2.5])
      expect(later(crests(wave, least))).toEqual(later(peaks.filter((_, i) => prominences[i]! > least)));
  });

  it("counts, in MIT-BIH record 208, just the published 276 maxima with a prominence up to 0.6 mV", () => {
    const millivolts = published.ecg.raw_counts.map((count) => (count - 1024) / 200);
    const all = crests([-10, ...millivolts], 0); // a trough in front: the record begins on a slope
    const prominent = crests([-10, ...millivolts], 0.6 + 1e-9);
    expect(all.length - prominent.length).toBe(published.ecg.expected.prominence_up_to_0_6.count);
  });

  it("steps over places without a reading", () => {
    expect(turningPoints([0, Number.NaN, 5, Number.NaN, 1, 6, 2], 0, 7, 2)).toEqual([2, 4, 5]);
  });
});
