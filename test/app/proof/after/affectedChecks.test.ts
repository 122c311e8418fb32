import { describe, expect, it } from "vitest";
import { combine } from "../../../../app/correction/combine.ts";
import type { GaugeCurve } from "../../../../app/correction/GaugeCurve.ts";
import { affectedChecks, type CheckInDoubt } from "../../../../app/proof/after/affectedChecks.ts";

const line = (source: "repeatability" | "gaugeProof" | "adapter", standardN: number) =>
  ({ source, type: "B", distribution: "normal", standardN, degreesOfFreedom: Infinity, assumed: false }) as const;
const budget = combine([line("repeatability", 20), line("gaugeProof", 10), line("adapter", 5)]);

/** A spindle with a minimum of 15 kN, its gauge so far taken at its word, an adapter of 1.02. */
const check = (checkId: string, netN: number, more: Partial<CheckInDoubt> = {}): CheckInDoubt => ({
  checkId,
  verdict: "good",
  valueN: netN * 1.02,
  netN,
  adapterScale: 1.02,
  budget,
  baseline: null,
  previous: null,
  terms: { limits: { minimumN: 15_000 }, rule: { rule: "guarded" } },
  ...more,
});
const curve = (scale: number): GaugeCurve => ({
  version: 2,
  coefficients: [0, scale],
  fromN: 0,
  toN: 30_000,
  uncertainty: [{ atN: 3000, relative: 0.001 }],
});

describe("affectedChecks", () => {
  it("names the checks whose verdict would change, and leaves what was filed as it is", () => {
    const filed = Object.freeze([Object.freeze(check("a", 15_000)), Object.freeze(check("b", 20_000))]);
    const got = affectedChecks(filed, { curve: curve(0.95) });
    expect(got.map((c) => [c.checkId, c.filedVerdict, c.wouldBe, c.verdictChanges])).toEqual([
      ["a", "good", "stop", true],
      ["b", "good", "good", false],
    ]);
    expect(got[0]!.filedN).toBe(15_300);
    expect(got[0]!.correctedN).toBeCloseTo(15_000 * 0.95 * 1.02, 9);
    expect(got[0]!.relative).toBeCloseTo(-0.05, 12);
  });

  it("changes nothing when the new curve says what the old one said", () => {
    const got = affectedChecks([check("a", 15_000)], { curve: curve(1) });
    expect(got[0]).toMatchObject({ wouldBe: "good", verdictChanges: false, relative: 0 });
  });

  it("puts the new curve's uncertainty in the old one's place", () => {
    // 15 080 N with 20, 15 and 5 N: the guard band of twice 25.5 N still clears the minimum; with the new proof's 1 % it does not.
    const near = check("a", 15_080 / 1.02);
    const poor = { ...curve(1), uncertainty: [{ atN: 3000, relative: 0.01 }] };
    expect(affectedChecks([near], { curve: curve(1) })[0]!.wouldBe).toBe("good");
    expect(affectedChecks([near], { curve: poor })[0]!.wouldBe).toBe("stop");
  });

  it("lets a common error cancel in the fall from a baseline that is in doubt too", () => {
    const terms = { limits: {}, rule: { rule: "simple" } } as const;
    const baseline = { checkId: "a", valueN: 20_400, standardUncertaintyN: 23, correlation: 0 };
    const later = check("b", 19_000, { terms, baseline });
    const both = affectedChecks([later, check("a", 20_000, { terms })], { curve: curve(0.9) });
    expect(both[0]!.wouldBe).toBe("good"); // 19 to 20 is a fall of 5 % by any curve
    const alone = affectedChecks([later], { curve: curve(0.9) });
    expect(alone[0]!.wouldBe).toBe("watch"); // the baseline stands, so the fall becomes 14.5 %
  });

  it("does the same for an adapter found off", () => {
    const got = affectedChecks([check("a", 15_000)], { adapter: { scale: 0.98, relative: 0.001 } });
    expect(got[0]).toMatchObject({ wouldBe: "stop", correctedN: expect.closeTo(14_700, 9) });
  });

  it("leaves a check without a force at cannotTell, and one without an indication at its filed value", () => {
    const none = check("a", 0, { valueN: null, netN: null, budget: null, verdict: "cannotTell" });
    const typed = check("b", 15_300 / 1.02, { netN: null });
    const got = affectedChecks([none, typed], { curve: curve(0.5) });
    expect(got[0]).toMatchObject({
      wouldBe: "cannotTell",
      verdictChanges: false,
      correctedN: undefined,
      relative: undefined,
    });
    expect(got[1]).toMatchObject({ wouldBe: "good", correctedN: 15_300, relative: 0 });
  });
});
