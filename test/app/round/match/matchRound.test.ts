import { describe, expect, it } from "vitest";
import type { MatchStop } from "../../../../app/round/match/MatchStop.ts";
import { matchRound } from "../../../../app/round/match/matchRound.ts";
import type { Take } from "../../../../app/round/take/Take.ts";

const start = Date.parse("2026-03-02T08:00:00Z");
const stop = (spindleId: string, forceN: number, location?: string): MatchStop => ({
  spindleId,
  location,
  expected: { forceN, scatter: 0.01, spread: 0.011 },
});
const take = (valueN: number | undefined, minute: number, over: Partial<Take> = {}): Take => ({
  valueN,
  atMs: start + minute * 60_000,
  location: undefined,
  kind: "held",
  refused: undefined,
  ...over,
});
const plan = [stop("a", 10_000), stop("b", 15_000), stop("c", 22_000), stop("d", 33_000)];
const match = (takes: readonly Take[], stops: readonly MatchStop[] = plan, ordered = true) =>
  matchRound(Object.freeze(takes), stops, { order: [...takes.keys()], ordered });
const codes = (m: ReturnType<typeof match>) => m.questions.map((q) => q.code);

describe("matching by time and plausibility", () => {
  it("files a clean round without a question", () => {
    const m = match([take(10_050, 0), take(15_100, 5), take(21_900, 10), take(33_200, 15)]);
    expect(m.visits.map((v) => v.stop)).toEqual([0, 1, 2, 3]);
    expect(m.visits.every((v) => v.confidence === "sure")).toBe(true);
    expect(m.questions).toEqual([]);
  });

  it("puts repeated takes together and names what is missing", () => {
    const m = match([take(10_050, 0), take(10_010, 0.5), take(10_080, 1), take(33_200, 15)]);
    expect(m.visits.map((v) => v.takes)).toEqual([[0, 1, 2], [3]]);
    expect(m.missing).toEqual([1, 2]);
  });

  it("follows the forces where two were visited the other way round", () => {
    const m = match([take(10_050, 0), take(21_900, 5), take(15_100, 10), take(33_200, 15)]);
    expect(m.visits.map((v) => v.stop)).toEqual([0, 2, 1, 3]);
    expect(m.questions).toEqual([]);
  });

  it("gives a spindle its second visit when it was measured again later", () => {
    const m = match([take(10_050, 0), take(15_100, 5), take(10_010, 10), take(21_900, 15), take(33_200, 20)]);
    expect(m.visits.map((v) => v.stop)).toEqual([0, 1, 0, 2, 3]);
    expect(m.questions).toEqual([]);
  });

  it("always asks about spindles closer than three scatters, and proposes the order of the round", () => {
    const stops = [stop("a", 20_000), stop("b", 20_300), stop("c", 33_000)];
    const m = match([take(20_350, 0), take(19_980, 5), take(33_100, 10)], stops);
    expect(m.questions).toEqual([expect.objectContaining({ code: "alike", takes: [0, 1], stops: [0, 1] })]);
    expect(m.visits.map((v) => v.stop)).toEqual([0, 1, 2]);
    expect(m.visits[2]!.confidence).toBe("sure");
  });

  it("asks about a force that fits no spindle", () => {
    const m = match([take(10_050, 0), take(60_000, 5), take(15_100, 10), take(21_900, 15), take(33_200, 20)]);
    expect(m.visits[1]!.stop).toBeUndefined();
    expect(codes(m)).toEqual(["belongsNowhere"]);
  });

  it("asks about a spindle of which nothing is known", () => {
    const m = match([take(10_050, 0)], [{ spindleId: "new", location: undefined, expected: undefined }]);
    expect(codes(m)).toContain("unsure");
  });
});

describe("matching by location", () => {
  const located = plan.map((s, i) => ({ ...s, location: `${i + 1}` }));
  const at = (valueN: number, minute: number, location: number) => take(valueN, minute, { location: `${location}` });

  it("files by it, out of order, and where forces are alike", () => {
    const alike = [stop("a", 20_000, "1"), stop("b", 20_010, "2")];
    expect(match([at(20_000, 0, 2), at(20_010, 5, 1)], alike)).toMatchObject({
      visits: [
        { stop: 1, confidence: "sure" },
        { stop: 0, confidence: "sure" },
      ],
      questions: [],
    });
  });

  it("files a spindle that has fallen by a fifth without a question: that is what the round is for", () => {
    const m = match([at(10_050, 0, 1), at(12_000, 5, 2), at(21_900, 10, 3), at(33_200, 15, 4)], located);
    expect(m.visits.map((v) => v.stop)).toEqual([0, 1, 2, 3]);
    expect(m.questions).toEqual([]);
  });

  it("asks when two forces fit the other way round", () => {
    const m = match([at(15_100, 0, 1), at(10_050, 5, 2), at(21_900, 10, 3), at(33_200, 15, 4)], located);
    expect(m.questions).toEqual([expect.objectContaining({ code: "swapped", takes: [0, 1], proposal: "swap" })]);
    expect(m.visits.map((v) => v.stop)).toEqual([1, 0, 2, 3]);
  });

  it("asks about a location that no spindle of the round has", () => {
    expect(codes(match([at(10_050, 0, 9), at(15_100, 5, 2)], located))).toContain("unknownLocation");
  });
});

describe("slips of the day", () => {
  it.each([
    ["lbf read as N", 4.4482216152605],
    ["kgf read as N", 9.80665],
    ["daN read as N", 10],
    ["N read as daN", 0.1],
    ["kN read as N", 1000],
  ])("finds %s over the whole memory", (_, factor) => {
    const m = match([10_050, 15_100, 21_900, 33_200].map((v, i) => take(v / factor, 5 * i)));
    expect(m.questions).toEqual([
      expect.objectContaining({ code: "unitFactor", proposal: "scale", takes: [0, 1, 2, 3] }),
    ]);
    expect(m.questions[0]!.factor).toBeCloseTo(factor, 9);
    expect(m.visits.map((v) => v.stop)).toEqual([0, 1, 2, 3]);
  });

  it("finds one visit taken in another unit", () => {
    const m = match([take(10_050, 0), take(15_100, 5), take(219_000, 10), take(33_200, 15)]);
    expect(m.questions).toEqual([expect.objectContaining({ code: "unitFactor", takes: [2] })]);
    expect(m.questions[0]!.factor).toBeCloseTo(0.1, 9);
  });

  it("finds a take without clamping, a torque, an overload, a date outside the round and one clamping stored twice", () => {
    const takes = [
      take(40, 0),
      take(undefined, 1, { refused: "torque" }),
      take(undefined, 2, { refused: "overload" }),
      take(10_050, 5),
      take(10_050, 5.02),
      take(15_100, 60 * 24 * 40),
    ];
    const m = matchRound(takes, plan, {
      order: [...takes.keys()],
      ordered: true,
      fromMs: start,
      toMs: start + 8 * 3_600_000,
    });
    expect(m.questions.map((q) => [q.code, ...q.takes])).toEqual([
      ["noClamping", 0],
      ["torque", 1],
      ["overload", 2],
      ["valueTwice", 3, 4],
      ["dateOutside", 5],
    ]);
    expect(m.visits.map((v) => v.takes)).toEqual([[3]]);
  });

  it("finds the maximum of the spindle before, not cleared", () => {
    const located = plan.map((s, i) => ({ ...s, location: `${i + 1}` }));
    const takes = [take(33_200, 0, { location: "4" }), take(33_200, 5, { location: "1" })];
    expect(match(takes, located).questions).toContainEqual(
      expect.objectContaining({ code: "maximumKept", takes: [1], proposal: "measureAgain" }),
    );
  });

  it("has nothing to say of an empty memory", () => {
    expect(match([])).toEqual({ visits: [], questions: [], missing: [0, 1, 2, 3] });
  });
});
