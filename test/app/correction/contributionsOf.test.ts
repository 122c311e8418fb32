import { describe, expect, it } from "vitest";
import type { BudgetInput } from "../../../app/correction/BudgetInput.ts";
import { contributionsOf } from "../../../app/correction/contributionsOf.ts";

const series: BudgetInput = Object.freeze({
  forceN: 20_000,
  repeats: { n: 4, sN: 60 },
  misalignment: { halfWidth: 0 },
});
const lines = (input: BudgetInput) => contributionsOf(input).map((c) => [c.source, c.standardN] as const);
const of = (input: BudgetInput, source: string) => contributionsOf(input).filter((c) => c.source === source);

describe("contributionsOf", () => {
  it("divides the scatter of a series by √n, with n - 1 degrees of freedom", () => {
    expect(contributionsOf(series)).toEqual([
      { source: "repeatability", type: "A", distribution: "t", standardN: 30, degreesOfFreedom: 3, assumed: false },
    ]);
  });

  it("counts the noise in the hold for a single clamping alone", () => {
    expect(of({ ...series, holdN: 25 }, "holdNoise")).toEqual([]);
    expect(lines({ ...series, repeats: { n: 1 }, holdN: 25 })).toEqual([["holdNoise", 25]]);
  });

  it("lets the spindle's earlier scatter stand for a single clamping, noise included", () => {
    const single = { ...series, repeats: { n: 1 }, holdN: 25, earlierScatter: { sN: 80, degreesOfFreedom: 12 } };
    expect(contributionsOf(single)).toMatchObject([
      { source: "repeatability", standardN: 80, degreesOfFreedom: 12, distribution: "t" },
    ]);
  });

  it("counts the resolution only where its uncertainty exceeds the standard deviation of one clamping", () => {
    const step = 60 * Math.sqrt(12);
    expect(of({ ...series, resolutionN: step }, "resolution")).toEqual([]);
    expect(of({ ...series, resolutionN: step * 1.01 }, "resolution")).toHaveLength(1);
    expect(of({ ...series, repeats: { n: 4, sN: 0 }, resolutionN: 10 }, "resolution")[0]!.standardN).toBeCloseTo(
      10 / Math.sqrt(12),
      12,
    );
  });

  it("does not divide resolution and zero by √n", () => {
    const zero = { noiseN: 7, halfChangeN: 12 };
    const [one, nine] = [3, 30].map((n) =>
      contributionsOf({ ...series, repeats: { n, sN: 0 }, resolutionN: 10, zero }),
    );
    expect(nine).toEqual(one);
    expect(one!.map((c) => c.source)).toEqual(["resolution", "zero", "zero"]);
  });

  it("takes the zero's rounding in place of its noise where it is the greater, never both", () => {
    const zeroLines = (noiseN: number) => of({ ...series, resolutionN: 10, zero: { noiseN } }, "zero");
    expect(zeroLines(3)).toMatchObject([{ distribution: "normal", standardN: 3 }]);
    expect(zeroLines(2)).toMatchObject([{ distribution: "rectangular", standardN: 10 / Math.sqrt(12) }]);
  });

  it("leaves the zero's rounding out where its readings scatter enough to average it out", () => {
    const zero = { noiseN: 1, readingN: 3 };
    expect(of({ ...series, resolutionN: 10, zero }, "zero")).toMatchObject([{ distribution: "normal", standardN: 1 }]);
    expect(of({ ...series, resolutionN: 11, zero }, "zero")).toMatchObject([{ distribution: "rectangular" }]);
  });

  it("takes half the zero's change for the half-width of a rectangle", () => {
    expect(of({ ...series, zero: { halfChangeN: 9 } }, "zero")).toMatchObject([
      { distribution: "rectangular", standardN: 9 / Math.sqrt(3) },
    ]);
  });

  it("brings what is stated at the gauge to the taper by the sensitivity", () => {
    const at = (sensitivity: number) =>
      contributionsOf({ ...series, sensitivity, repeats: { n: 1 }, holdN: 25, resolutionN: 200, zero: { noiseN: 70 } });
    expect(at(-1.1).map((c) => c.standardN)).toEqual(at(1).map((c) => expect.closeTo(1.1 * c.standardN, 9)));
  });

  it("takes proof, adapter, temperature, drift and misalignment as shares of the force", () => {
    const full = lines({
      ...series,
      gaugeProof: { relative: 0.001 },
      adapter: { relative: 0.002 },
      temperature: { perKelvin: 0.0005, differenceK: -6 },
      drift: { perYear: 0.002, years: 0.5 },
      misalignment: { halfWidth: 0.003 },
    });
    expect(full.map(([source]) => source)).toEqual([
      "repeatability",
      "gaugeProof",
      "adapter",
      "temperature",
      "drift",
      "misalignment",
    ]);
    expect(full.map(([, u]) => u)).toEqual(
      [30, 20, 40, 60 / Math.sqrt(3), 20 / Math.sqrt(3), 60 / Math.sqrt(3)].map((u) => expect.closeTo(u, 9)),
    );
  });

  it("marks the default misalignment and whatever else nobody has confirmed", () => {
    const { misalignment: _, ...unset } = series;
    expect(of(unset, "misalignment")).toMatchObject([
      { assumed: true, standardN: expect.closeTo((20_000 * 0.005) / Math.sqrt(3), 9) },
    ]);
    expect(of({ ...series, gaugeProof: { relative: 0.01, assumed: true } }, "gaugeProof")).toMatchObject([
      { assumed: true },
    ]);
    expect(of({ ...series, misalignment: { halfWidth: 0.01 } }, "misalignment")).toMatchObject([{ assumed: false }]);
  });

  it("gives a proof of few readings Student's t", () => {
    expect(of({ ...series, gaugeProof: { relative: 0.001, degreesOfFreedom: 7 } }, "gaugeProof")).toMatchObject([
      { distribution: "t", type: "B", degreesOfFreedom: 7 },
    ]);
  });

  it.each<[string, Partial<BudgetInput>]>([
    ["no clamping", { repeats: { n: 0 } }],
    ["a series without its scatter", { repeats: { n: 2 } }],
    ["a negative scatter", { repeats: { n: 2, sN: -1 } }],
    ["a negative share", { gaugeProof: { relative: -0.1 } }],
    ["a resolution that is not a number", { resolutionN: NaN }],
    ["an unfinite force", { forceN: Infinity, adapter: { relative: 0.1 } }],
  ])("refuses %s", (_, over) => {
    expect(() => contributionsOf({ ...series, ...over })).toThrow(RangeError);
  });
});
