import { describe, expect, it } from "vitest";
import type { Contribution } from "../../../app/correction/Budget.ts";
import { combine } from "../../../app/correction/combine.ts";
import type { DecisionRule, JudgeInput } from "../../../app/verdict/Judgement.ts";
import { judge } from "../../../app/verdict/judge.ts";
import { settlingSentence } from "../../../app/verdict/settlingSentence.ts";
import { uncertaintyOf } from "../../../app/verdict/uncertaintyOf.ts";
import { whatSettles } from "../../../app/verdict/whatSettles.ts";

const line = (source: Contribution["source"], standardN: number, degreesOfFreedom = Infinity): Contribution => ({
  source,
  type: source === "repeatability" ? "A" : "B",
  distribution: degreesOfFreedom === Infinity ? "normal" : "t",
  standardN,
  degreesOfFreedom,
  assumed: false,
});
const input = (lines: Contribution[], valueN: number, rule: DecisionRule = { rule: "iso14253" }): JudgeInput => ({
  valueN,
  limits: { minimumN: 15_000 },
  rule,
  ...uncertaintyOf(combine(lines)),
});

describe("whatSettles", () => {
  // scatter 120 N over 4 clampings, 10 N of the rest; 100 N above the limit under a stated factor of 2:
  // 2 √(120²/m + 10²) ≤ 100 from m = 6 on, since 120²/2400 = 6
  it("counts the further clampings that decide it", () => {
    const lines = [line("repeatability", 60, 3), line("gaugeProof", 10)];
    const open = input(lines, 15_100, { rule: "iso14253", coverageFactor: 2 });
    expect(whatSettles(open, lines, 4)).toMatchObject({
      moreClampings: 2,
      scatterUnknown: false,
      improve: "gaugeProof",
    });
  });

  it("counts more of them where Student's t has to shrink as well", () => {
    const lines = [line("repeatability", 60, 2), line("gaugeProof", 10)];
    const few = whatSettles(input(lines, 15_100), lines, 3)!.moreClampings!;
    const decidedAt = (m: number) => {
      const spread = [line("repeatability", (60 * Math.sqrt(3)) / Math.sqrt(m), m - 1), line("gaugeProof", 10)];
      return judge(input(spread, 15_100)).verdict;
    };
    expect([decidedAt(3 + few - 1), decidedAt(3 + few)]).toEqual(["cannotTell", "good"]);
  });

  it("names the part to improve where no number of clampings would do", () => {
    const lines = [line("repeatability", 30, 4), line("adapter", 80), line("zero", 20)];
    const settling = whatSettles(input(lines, 15_100), lines, 5)!;
    expect(settling).toMatchObject({ moreClampings: undefined, improve: "adapter" });
    expect(settlingSentence(settling)).toMatch(/standard uncertainty of \d+(\.\d)? N or less\. Another adapter/);
  });

  it("asks for a series first where a single clamping has not shown its scatter", () => {
    const lines = [line("holdNoise", 40), line("gaugeProof", 50)];
    const settling = whatSettles(input(lines, 15_050), lines, 1)!;
    expect(settling).toMatchObject({ scatterUnknown: true, moreClampings: 2 });
    expect(settlingSentence(settling)).toMatch(/^Clamp twice more/);
  });

  it("knows the uncertainty that decides: margin over the guard factor", () => {
    const open: JudgeInput = {
      valueN: 15_100,
      standardUncertaintyN: 90,
      limits: { minimumN: 15_000 },
      rule: { rule: "ilacG8" },
    };
    expect(whatSettles(open)!.neededStandardN).toBeCloseTo(50, 6);
    const probable = { ...open, rule: { rule: "probability" as const } };
    expect(whatSettles(probable)!.neededStandardN).toBeCloseTo(100 / 1.6448536269514722, 4);
  });

  it("does not promise an answer for a value on the limit itself", () => {
    const on = whatSettles({
      valueN: 15_000,
      standardUncertaintyN: 90,
      limits: { minimumN: 15_000 },
      rule: { rule: "iso14253" },
    })!;
    expect(on.neededStandardN).toBeUndefined();
    expect(settlingSentence(on)).toMatch(/on the limit itself/);
  });

  it("has nothing to say where the answer is clear, or nothing can be judged", () => {
    const lines = [line("repeatability", 10, 4)];
    expect(whatSettles(input(lines, 18_000), lines, 5)).toBeUndefined();
    expect(whatSettles({ ...input(lines, 18_000), limits: {} }, lines, 5)).toBeUndefined();
    expect(whatSettles({ ...input(lines, 18_000), valueN: undefined }, lines, 5)).toBeUndefined();
  });

  it("says one clamping as one", () => {
    expect(settlingSentence({ neededStandardN: 5, moreClampings: 1, scatterUnknown: false, improve: undefined })).toBe(
      "One more clamping would settle it if mean and scatter stay as they are.",
    );
  });
});
