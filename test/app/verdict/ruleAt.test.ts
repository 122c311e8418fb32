import { describe, expect, it } from "vitest";
import type { DecisionRule, JudgeInput, Zone } from "../../../app/verdict/Judgement.ts";
import { judge } from "../../../app/verdict/judge.ts";
import { ruleAt } from "../../../app/verdict/ruleAt.ts";
import rules from "../../published/decision-rules.json" with { type: "json" };

const input = (valueN: number, rule: DecisionRule, u = 0.15): JudgeInput & { valueN: number } => ({
  valueN,
  standardUncertaintyN: u,
  limits: { minimumN: 18 },
  rule,
});
const zoneWords: Record<string, Zone> = {
  pass: "pass",
  "conditional pass": "conditionalPass",
  "conditional fail": "conditionalFail",
  fail: "fail",
};

describe("ruleAt, a lower limit of 18.0 with U = 0.3", () => {
  // ILAC-G8:09/2019 4.2.1 to 4.2.3; the rows were constructed from its definitions in the set of published values
  it.each(rules.boundary_cases.rows)("gives the zones of ILAC-G8 at $measured", (row) => {
    const { measured } = row;
    expect(judge(input(measured, { rule: "simple" })).conformity).toBe(
      row.simple_acceptance === "pass" ? "conforming" : "nonConforming",
    );
    expect(judge(input(measured, { rule: "guarded" })).conformity).toBe(
      row.guarded_binary === "pass" ? "conforming" : "nonConforming",
    );
    const zone = zoneWords[row.guarded_non_binary]!;
    const judgement = judge(input(measured, { rule: "ilacG8" }));
    expect(judgement.zone).toBe(zone);
    expect(judgement.conformity).toBe(zone === "pass" ? "conforming" : zone === "fail" ? "nonConforming" : "undecided");
    expect(judgement.verdict).toBe(zone === "pass" ? "good" : zone === "fail" ? "stop" : "cannotTell");
    expect(Math.abs(judgement.probabilityConforming! - row.p_conform)).toBeLessThan(1e-9);
  });

  it.each(rules.boundary_cases.rows)("mirrors them at an upper limit for $measured", (row) => {
    const mirrored = 36 - row.measured;
    const at = ruleAt({ ...input(mirrored, { rule: "ilacG8" }), limits: {} }, "maximum", 18);
    expect(at.zone).toBe(zoneWords[row.guarded_non_binary]);
    expect(Math.abs(at.odds.conforming - row.p_conform)).toBeLessThan(1e-9);
  });

  // ILAC-G8:09/2019, table of guard-band rules (found second-hand): risk at the acceptance limit
  it.each(rules.guard_band_rules)("accepts at the guard band of '$rule' with its stated risk", (row) => {
    const rule: DecisionRule = { rule: "guarded", guardFactor: row.w_over_U };
    const judgement = judge(input(18 + row.w_over_U * 0.3, rule));
    expect(judgement.conformity).toBe("conforming");
    const risk = row.w_over_U < 0 ? judgement.probabilityConforming! : 1 - judgement.probabilityConforming!;
    expect(Math.abs(risk - row.recomputed_risk)).toBeLessThan(1e-9);
    expect(judge(input(18 + row.w_over_U * 0.3 - 1e-6, rule)).conformity).toBe("nonConforming");
  });
});

describe("ruleAt under ISO 14253-1", () => {
  // ISO 14253-1:2017 (from memory): proved with at least 95 %, guard band 1.65 u, here 1.645 u
  const iso: DecisionRule = { rule: "iso14253" };

  it("proves conformity and nonconformity from 1.645 u on, and neither between", () => {
    const answers = [18.2468, 18.2467, 18, 17.7533, 17.7532].map((value) => judge(input(value, iso)).conformity);
    expect(answers).toEqual(["conforming", "undecided", "undecided", "undecided", "nonConforming"]);
  });

  it("is 95 % sure at the border", () => {
    expect(judge(input(18 + 1.645 * 0.15, iso)).probabilityConforming).toBeCloseTo(0.95, 4);
  });

  it("takes the border itself for proved inside and for undecided outside", () => {
    expect(judge(input(18.24675, iso)).conformity).toBe("conforming");
    expect(judge(input(17.75325, iso)).conformity).toBe("undecided");
  });

  it("takes U for the guard band as the edition of 1998 did, when asked to", () => {
    expect(judge(input(18.29, { ...iso, coverageFactor: 2 })).conformity).toBe("undecided");
    expect(judge(input(18.3, { ...iso, coverageFactor: 2 })).conformity).toBe("conforming");
  });
});

describe("ruleAt by probability of conformity", () => {
  it("conforms from the threshold on and fails from its mirror image on", () => {
    const answers = [1.645, 1.644, 0, -1.644, -1.645].map(
      (z) => judge(input(18 + z * 0.15, { rule: "probability" })).conformity,
    );
    expect(answers).toEqual(["conforming", "undecided", "undecided", "undecided", "nonConforming"]);
  });

  it("takes a value on the limit at a threshold of one half", () => {
    expect(judge(input(18, { rule: "probability", threshold: 0.5 })).conformity).toBe("conforming");
  });
});

describe("two-sided limits", () => {
  const both = (valueN: number, rule: DecisionRule["rule"]) =>
    judge({ valueN, standardUncertaintyN: 100, limits: { minimumN: 15_000, maximumN: 20_000 }, rule: { rule } });

  it.each([
    [15_200, "guarded", "conforming", "good"],
    [15_199, "guarded", "nonConforming", "stop"],
    [19_800, "guarded", "conforming", "good"],
    [19_801, "guarded", "nonConforming", "act"],
    [19_900, "iso14253", "undecided", "cannotTell"],
    [20_165, "iso14253", "nonConforming", "act"],
    [14_835, "iso14253", "nonConforming", "stop"],
    [20_200, "ilacG8", "undecided", "cannotTell"],
    [20_201, "ilacG8", "nonConforming", "act"],
    [20_001, "simple", "nonConforming", "act"],
    [19_830, "probability", "conforming", "good"],
    [19_840, "probability", "undecided", "cannotTell"],
    [20_170, "probability", "nonConforming", "act"],
  ] as const)("judges %d under %s as %s: %s", (value, rule, conformity, verdict) => {
    expect(both(value, rule)).toMatchObject({ conformity, verdict });
  });

  it("shows the worse of two zones", () => {
    expect(both(19_900, "ilacG8").zone).toBe("conditionalPass");
    expect(both(14_900, "ilacG8").zone).toBe("conditionalFail");
  });
});
