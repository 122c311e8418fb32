import { describe, expect, it } from "vitest";
import { steadiness, steadyStretches } from "../../../../app/proof/reference/steadiness.ts";
import { takeSteps } from "../../../../app/proof/reference/takeSteps.ts";

const rule = { windowS: 2, maxDrift: 4, maxScatter: 2 };
const tS = Array.from({ length: 201 }, (_, i) => i / 10);
const ramped = {
  tS,
  value: tS.map((t) => (t < 5 ? 0 : t < 8 ? (t - 5) * 1000 : t < 15 ? 3000 : 3000 - (t - 15) * 500)),
};

describe("steadiness", () => {
  it("is complete at rest, half used at the limit of drift, and none at twice the limit", () => {
    const drifting = (perS: number) => steadiness({ tS, value: tS.map((t) => 100 + perS * t) }, 0, 20, rule);
    expect(drifting(0)).toEqual({ steady: true, share: 1 });
    expect(drifting(2).share).toBeCloseTo(0.5, 9); // 4 N over the window of 2 s
    expect(drifting(2.1).steady).toBe(false);
    expect(drifting(4).share).toBeCloseTo(0, 9);
  });

  it("sees scatter that has no trend", () => {
    const value = tS.map((_, i) => (i % 2) * 6);
    expect(steadiness({ tS, value }, 0, 20, rule).steady).toBe(false);
  });

  it("cannot tell from fewer than five readings, or readings of one moment", () => {
    expect(steadiness(ramped, 0, 3, rule)).toEqual({ steady: false, share: 0 });
    expect(steadiness({ tS: tS.map(() => 1), value: tS }, 0, 20, rule)).toEqual({ steady: false, share: 0 });
  });
});

describe("steadyStretches", () => {
  it("names the rests and nothing of the ramps", () => {
    const found = steadyStretches(ramped, rule);
    expect(found).toHaveLength(2);
    expect(found[0]).toMatchObject({ fromS: 0, toS: expect.closeTo(5, 1) });
    expect(found[1]).toMatchObject({ fromS: expect.closeTo(8, 1), toS: expect.closeTo(15, 1) });
  });

  it("does not bridge a gap in the readings", () => {
    const kept = tS.filter((t) => t < 9.5 || t > 12.5);
    const gapped = { tS: kept, value: kept.map(() => 3000) };
    const found = steadyStretches(gapped, rule);
    expect(found.map((s) => [s.fromS, s.toS])).toEqual([
      [0, 9.4],
      [12.6, 20],
    ]);
  });

  it("is empty for a stream shorter than its window", () => {
    expect(steadyStretches({ tS: [0, 0.5, 1], value: [1, 1, 1] }, rule)).toEqual([]);
    expect(steadyStretches({ tS: [], value: [] }, rule)).toEqual([]);
  });
});

describe("takeSteps", () => {
  it("takes nothing while one of the two still moves", () => {
    const resting = { tS, value: tS.map(() => 3000) };
    const late = { tS, value: tS.map((t) => Math.min(3000, 150 * t)) };
    const steps = takeSteps(resting, late, { reference: rule, gauge: rule, offsetS: 0, offsetHalfWidthS: 0.05 });
    expect(steps).toEqual([]);
  });
});
