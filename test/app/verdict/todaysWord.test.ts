import { describe, expect, it } from "vitest";
import { type FiledVerdict, todaysWord } from "../../../app/verdict/todaysWord.ts";

const terms = {
  limits: { minimumN: 15_000, warningN: 16_000, nominalN: 18_000, maximumN: 21_000 },
  rule: { rule: "guarded", coverageFactor: 2, guardFactor: 1, threshold: 0.95 } as const,
  cautionDrop: 0.1,
  actDrop: 0.2,
};
const filed: FiledVerdict = {
  ...terms,
  verdict: "good",
  valueN: 18_000,
  budget: {
    standardN: 50,
    degreesOfFreedom: null,
    contributions: [{ distribution: "normal", standardN: 50, degreesOfFreedom: null }],
  },
  baseline: null,
  previous: null,
};

describe("today's word on a filed check", () => {
  it("is none while nothing has changed", () => {
    expect(todaysWord(filed, terms)).toBeUndefined();
  });

  it.each([
    ["limits", { limits: { ...terms.limits, minimumN: 15_001 } }],
    ["limits", { limits: { ...terms.limits, warningN: 16_001 } }],
    ["limits", { limits: { ...terms.limits, nominalN: 18_001 } }],
    ["limits", { limits: { ...terms.limits, maximumN: 21_001 } }],
    ["rule", { rule: { ...terms.rule, rule: "simple" as const } }],
    ["rule", { rule: { ...terms.rule, coverageFactor: 2.1 } }],
    ["rule", { rule: { ...terms.rule, guardFactor: 1.1 } }],
    ["rule", { rule: { ...terms.rule, threshold: 0.96 } }],
    ["drops", { cautionDrop: 0.11 }],
    ["drops", { actDrop: 0.21 }],
  ] as const)("names %s alone when one figure of them is another, also where the verdict stays", (what, change) => {
    expect(todaysWord(filed, { ...terms, ...change })).toMatchObject({ verdict: "good", changed: [what] });
  });

  it("names all that changed", () => {
    const today = { ...terms, limits: { minimumN: 19_000 }, actDrop: 0.3 };
    expect(todaysWord(filed, today)).toMatchObject({ verdict: "stop", changed: ["limits", "drops"] });
  });

  it("is said under the same terms when this program judges otherwise than the one that filed", () => {
    expect(todaysWord({ ...filed, verdict: "watch" }, terms)).toMatchObject({ verdict: "good", changed: [] });
  });
});
