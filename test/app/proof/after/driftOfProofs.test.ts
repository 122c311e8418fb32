import { describe, expect, it } from "vitest";
import type { GaugeCurve } from "../../../../app/correction/GaugeCurve.ts";
import { curveChange } from "../../../../app/proof/after/curveChange.ts";
import { driftOfProofs } from "../../../../app/proof/after/driftOfProofs.ts";
import { defaultIntervalRule, nextProofDue } from "../../../../app/proof/after/nextProofDue.ts";

const curve = (scale: number, bend = 0): GaugeCurve => ({
  version: 1,
  coefficients: [0, scale, bend],
  fromN: 0,
  toN: 30_000,
  uncertainty: [{ atN: 3000, relative: 0.0005 }],
});
const proofs = (scales: readonly number[]) =>
  scales.map((scale, i) => ({ on: `${2020 + i}-06-01`, asFound: curve(scale) }));

describe("curveChange", () => {
  it("is the ratio of the forces, with both uncertainties", () => {
    const got = curveChange(curve(1), curve(1.002))!;
    expect(got.worst.relative).toBeCloseTo(0.002, 12);
    expect(got.worst.expanded).toBeCloseTo(1.96 * 0.0005 * Math.SQRT2, 12);
  });

  it("names the indication where the curves lie furthest apart", () => {
    const got = curveChange(curve(1), curve(1, 1e-7))!;
    expect(got.worst).toMatchObject({ atN: 30_000, relative: expect.closeTo(0.003, 12) });
    expect(got.points).toHaveLength(10);
    expect(got.points[0]!.atN).toBe(3000);
  });

  it("compares only what both cover", () => {
    expect(
      curveChange(curve(1), { ...curve(1), fromN: 10_000, toN: 20_000 })!
        .points.map((p) => p.atN)
        .at(-1),
    ).toBe(20_000);
    expect(curveChange(curve(1), { ...curve(1), fromN: 40_000, toN: 50_000 })).toBeUndefined();
  });
});

describe("driftOfProofs", () => {
  it("puts proofs in order and takes each against the one before", () => {
    const got = driftOfProofs(proofs([1, 1.001, 1.002]).toReversed());
    expect(got.steps.map((s) => [s.from, s.to, s.days])).toEqual([
      ["2020-06-01", "2021-06-01", 365],
      ["2021-06-01", "2022-06-01", 365],
    ]);
    expect(got.perYear).toBeUndefined();
  });

  it("does not count an adjustment as drift", () => {
    const adjusted = [
      { ...proofs([1.004])[0]!, asLeft: curve(1) },
      { on: "2021-06-01", asFound: curve(1.001) },
    ];
    expect(driftOfProofs(adjusted).steps[0]!.worst.relative).toBeCloseTo(0.001, 12);
  });

  it("finds a steady drift a year from four proofs on, and how sure it is", () => {
    const got = driftOfProofs(proofs([1, 1.001, 1.002, 1.0031, 1.004]));
    expect(got.perYear!.slope).toBeCloseTo(0.001, 4);
    expect(got.perYear!.expanded).toBeLessThan(0.0002);
  });

  it("has nothing to say of one proof, and refuses a date that is none", () => {
    expect(driftOfProofs(proofs([1]))).toEqual({ steps: [], perYear: undefined });
    expect(() => driftOfProofs([...proofs([1]), { on: "31.12.2026", asFound: curve(1) }])).toThrow(RangeError);
  });
});

// ILAC-G24 / OIML D 10, staircase, from memory; the factors are common practice, no source.
describe("nextProofDue", () => {
  const due = (scales: readonly number[], allowed = 0.003) =>
    nextProofDue("2026-06-01", driftOfProofs(proofs(scales)), { ...defaultIntervalRule, allowed });

  it.each([
    ["as planned after the first proof", [1], 365, "firstProof"],
    ["in half the time after a change beyond the allowed", [1, 1.004], 183, "beyondAllowed"],
    ["sooner after a change near the allowed", [1, 1.0025], 274, "nearAllowed"],
    ["as before after a middling change", [1, 1.0015], 365, "unchanged"],
    ["as before after a single small change", [1, 1.0001], 365, "unchanged"],
    ["later after two small changes", [1, 1.0001, 1.0002], 548, "steady"],
  ])("is %s", (_, scales, days, reason) => {
    expect(due(scales)).toMatchObject({ days, reason });
  });

  it("is no later than the trend lets the allowed change be used up", () => {
    const got = due([1, 1.0009, 1.0018, 1.0027, 1.0036], 0.001);
    expect(got).toMatchObject({ reason: "nearAllowed", days: 274 });
    const faster = nextProofDue(
      "2026-06-01",
      { steps: [], perYear: { slope: -0.003, expanded: 0.001 } },
      { ...defaultIntervalRule, allowed: 0.002 },
    );
    expect(faster).toMatchObject({ reason: "trend", days: Math.floor((365.25 * 0.002) / 0.004) });
  });

  it("stays between least and most, and names the day", () => {
    const rule = { ...defaultIntervalRule, intervalDays: 40, leastDays: 30 };
    expect(nextProofDue("2026-06-01", driftOfProofs(proofs([1, 1.1])), rule)).toMatchObject({
      days: 30,
      on: "2026-07-01",
    });
    const long = { ...defaultIntervalRule, intervalDays: 700 };
    expect(nextProofDue("2026-06-01", driftOfProofs(proofs([1, 1.0001, 1.0002])), long).days).toBe(730);
  });

  it("refuses a rule whose least lies over its most", () => {
    expect(() =>
      nextProofDue("2026-06-01", { steps: [], perYear: undefined }, { ...defaultIntervalRule, leastDays: 900 }),
    ).toThrow(RangeError);
  });
});
