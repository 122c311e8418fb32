import { describe, expect, it } from "vitest";
import { guardZones } from "../../../app/verdict/guardZones.ts";
import type { RuleName } from "../../../app/verdict/Judgement.ts";
import { judge } from "../../../app/verdict/judge.ts";

const limits = { minimumN: 14_000, maximumN: 20_000 };
const standardUncertaintyN = 100;
const zonesOf = (rule: RuleName, guardFactor?: number) =>
  guardZones(limits, { rule: { rule, coverageFactor: 2, guardFactor }, standardUncertaintyN });

describe("guardZones", () => {
  it.each(["simple", "probability"] as const)("draws none under %s", (rule) => {
    expect(zonesOf(rule)).toEqual([]);
  });

  // ILAC-G8:09/2019 4.2: with w = r U the acceptance limit lies w inside the tolerance limit.
  it("lies inside the limits under guarded, outside with a negative factor", () => {
    expect(zonesOf("guarded").map((z) => [z.fromN, z.upToN])).toEqual([
      [14_000, 14_200],
      [19_800, 20_000],
    ]);
    expect(zonesOf("guarded", -1).map((z) => [z.fromN, z.upToN])).toEqual([
      [13_800, 14_000],
      [20_000, 20_200],
    ]);
  });

  it.each(["iso14253", "ilacG8"] as const)("is where %s leaves a value open, and nowhere else", (rule) => {
    const answer = (valueN: number) =>
      judge({ valueN, standardUncertaintyN, limits, rule: { rule, coverageFactor: 2 } }).conformity;
    for (const { fromN, upToN } of zonesOf(rule)) {
      expect([fromN + 1, upToN - 1].map(answer)).toEqual(["undecided", "undecided"]);
      expect([fromN - 1, upToN + 1].map(answer)).not.toContain("undecided");
    }
    expect(zonesOf(rule)).toHaveLength(2);
  });

  it("has a band only at the limits there are", () => {
    const rule = { rule: "iso14253" as const };
    expect(guardZones({ minimumN: 14_000 }, { rule, standardUncertaintyN }).map((z) => z.side)).toEqual(["minimum"]);
    expect(guardZones({ nominalN: 14_000 }, { rule, standardUncertaintyN })).toEqual([]);
  });
});
