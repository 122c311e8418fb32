import { describe, expect, it } from "vitest";
import { type ProofPlan, presetPlan, proofMethods } from "../../../../app/proof/plan/ProofPlan.ts";
import { type PlanProblem, planProblems } from "../../../../app/proof/plan/planProblems.ts";
import type { ReferenceTransducer } from "../../../../app/proof/reference/ReferenceTransducer.ts";

const plan = presetPlan("iso376", 30_000);
const codes = (changed: Partial<ProofPlan>, capacityN = 30_000) =>
  planProblems({ ...plan, ...changed }, capacityN).map((p) => p.code);
const reference: ReferenceTransducer = {
  curve: { version: 1, coefficients: [0, 1], fromN: 0, toN: 50_000, uncertainty: [] },
  capacityN: 25_000,
  calibratedOn: "2024-05-01",
  dueOn: "2026-05-01",
  driftPerYear: 0,
};

describe("presets", () => {
  it.each(proofMethods)("of %s have nothing against them", (method) => {
    const preset = presetPlan(method, 30_000);
    expect(planProblems(preset, 30_000)).toEqual([]);
    expect(preset.loadsN.at(-1)).toBe(30_000);
    expect(preset.method).toBe(method);
  });

  it("need a capacity", () => {
    expect(() => presetPlan("working", 0)).toThrow(RangeError);
    expect(() => presetPlan("working", Number.NaN)).toThrow(RangeError);
  });
});

describe("planProblems", () => {
  it.each([
    ["no loads", { loadsN: [] }, "noLoads"],
    ["a load of zero", { loadsN: [0, 1000] }, "noLoads"],
    ["steps out of order", { loadsN: [3000, 9000, 6000] }, "loadsNotRising"],
    ["equal loads twice", { loadsN: [3000, 3000, 6000] }, "sameLoadTwice"],
    ["no runs", { runs: [] }, "noRuns"],
    ["a run's label twice", { runs: [plan.runs[0]!, plan.runs[0]!] }, "runTwice"],
    ["a reading time of zero", { readS: 0 }, "badTimes"],
    ["a negative wait", { dwellS: -1 }, "badTimes"],
  ])("stop a plan with %s", (_, changed, code) => {
    const found = planProblems({ ...plan, ...changed }, 30_000);
    expect(found.find((p) => p.code === code)).toMatchObject({ stops: true });
  });

  it("stop a load above the capacity of gauge or reference, by its newtons", () => {
    const found: readonly PlanProblem[] = planProblems(plan, 28_000, reference, "2026-01-01");
    expect(found).toEqual([
      { code: "aboveReferenceCapacity", stops: true, about: 27_000 },
      { code: "aboveGaugeCapacity", stops: true, about: 30_000 },
      { code: "aboveReferenceCapacity", stops: true, about: 30_000 },
    ]);
  });

  it.each([
    ["fewer runs", { runs: plan.runs.slice(0, 3) }, "tooFewRuns"],
    ["a position too few", { runs: plan.runs.map((r) => ({ ...r, positionDeg: 0 })) }, "tooFewPositions"],
    [
      "no second series at one position",
      { runs: plan.runs.map((r, i) => ({ ...r, positionDeg: 90 * i })) },
      "noRepeat",
    ],
    [
      "neither falling loads nor creep",
      { creep: false, runs: plan.runs.map((r) => ({ ...r, falling: false })) },
      "noReversibilityOrCreep",
    ],
    ["few loads", { loadsN: [6000, 18_000, 30_000] }, "tooFewLoads"],
  ])("warn of %s, since it costs the class", (_, changed, code) => {
    expect(codes(changed)).toContain(code);
    expect(planProblems({ ...plan, ...changed }, 30_000).every((p) => !p.stops)).toBe(true);
  });

  it("warn of a reference past due from the day after", () => {
    const wide = { ...reference, capacityN: 50_000 };
    expect(planProblems(plan, 30_000, wide, "2026-05-01")).toEqual([]);
    expect(planProblems(plan, 30_000, wide, "2026-05-02")).toEqual([
      { code: "referencePastDue", stops: false, about: "2026-05-01" },
    ]);
  });
});
