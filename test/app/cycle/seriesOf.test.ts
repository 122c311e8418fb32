import { describe, expect, it } from "vitest";
import type { CycleFlag } from "../../../app/cycle/Cycle.ts";
import { type SeriesMember, scatterSentence, seriesOf } from "../../../app/cycle/seriesOf.ts";
import outliers from "../../published/outlier-tests.json" with { type: "json" };

const settled = (forces: readonly number[]): SeriesMember[] =>
  forces.map((settledN, i) => ({ number: i + 1, settledN, peakN: 1.1 * settledN, flags: [] }));
const held = (peakN: number, number: number): SeriesMember => ({
  number,
  settledN: undefined,
  peakN,
  flags: ["peakHold"],
});

describe("the figures of a series", () => {
  it("are those of the settled forces", () => {
    const s = seriesOf(settled([14_320, 14_260, 14_290]));
    expect(s).toMatchObject({
      basis: "settled",
      n: 3,
      meanN: 14_290,
      sN: 30,
      rangeN: 60,
      scatter: "small",
      outliers: [],
    });
    expect(s.meanUncertaintyN).toBeCloseTo(30 / Math.sqrt(3), 9);
    expect(s.firstDifference).toBeCloseTo((14_320 - 14_275) / 14_275, 12);
  });

  it("are those of the held peaks when no cycle has a settled force", () => {
    expect(seriesOf([held(21_400, 1), held(21_200, 2)])).toMatchObject({
      basis: "peak",
      n: 2,
      meanN: 21_300,
      rangeN: 200,
    });
  });

  it("leave out, but do not count, a cycle without a force among others", () => {
    const hidden: SeriesMember = {
      number: 2,
      settledN: undefined,
      peakN: 30_000,
      flags: ["overload" satisfies CycleFlag],
    };
    expect(seriesOf([settled([14_000])[0]!, hidden])).toMatchObject({ basis: "settled", n: 1, meanN: 14_000 });
    expect(seriesOf([hidden])).toMatchObject({ n: 0, meanN: undefined });
  });

  it("of one cycle have no scatter, and of none nothing", () => {
    expect(seriesOf(settled([14_000]))).toMatchObject({
      n: 1,
      meanN: 14_000,
      sN: undefined,
      rangeN: undefined,
      meanUncertaintyN: undefined,
      firstDifference: undefined,
      scatter: "unknown",
    });
    expect(seriesOf([])).toMatchObject({ n: 0, meanN: undefined, outliers: [] });
  });
});

describe("outliers", () => {
  it("are named by the 5 % range rule below ten cycles (common practice, no source)", () => {
    expect(seriesOf(settled([14_300, 13_000, 14_280, 14_310])).outliers).toEqual([2]);
    expect(seriesOf(settled([14_300, 13_700, 14_280])).outliers).toEqual([]);
  });

  it("are not named when half the cycles would have to be: nobody stands out then", () => {
    expect(seriesOf(settled([14_300, 13_000])).outliers).toEqual([]);
    expect(seriesOf(settled([10_000, 12_000, 14_000, 16_000])).outliers).toEqual([]);
  });

  it("are named by the generalized ESD test from ten cycles on: EPA's example 12-4 names its two", () => {
    const { values } = outliers.cases.find((c) => c.name === "gesd-25")!.inputs;
    const found = seriesOf(settled(values.map((v) => 1000 * v))).outliers;
    expect(found.map((number) => values[number - 1])).toEqual([23.23, 35.45]);
  });

  it("keep the numbers the cycles have, where others were dropped", () => {
    const members = settled([14_300, 13_000, 14_280, 14_310]).map((m) => ({ ...m, number: m.number + 5 }));
    expect(seriesOf(members).outliers).toEqual([7]);
  });

  it("still count", () => {
    expect(seriesOf(settled([14_300, 13_000, 14_280, 14_310])).n).toBe(4);
  });
});

describe("what scatter means", () => {
  it.each([
    [[10_000, 10_100], "small"],
    [[10_000, 10_300], "usual"],
    [[10_000, 10_800], "large"],
  ] as const)("is said of %j as %s", (forces, scatter) => {
    expect(seriesOf(settled(forces)).scatter).toBe(scatter);
    expect(scatterSentence(scatter).length).toBeGreaterThan(20);
  });
});
