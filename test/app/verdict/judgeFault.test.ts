import { describe, expect, it } from "vitest";
import type { JudgeInput } from "../../../app/verdict/Judgement.ts";
import { judgeFault } from "../../../app/verdict/judgeFault.ts";

const sound: JudgeInput = {
  valueN: 18_000,
  standardUncertaintyN: 90,
  limits: {},
  rule: { rule: "simple" },
};

describe("judgeFault", () => {
  it("finds none in a sound input", () => {
    expect(judgeFault(sound)).toBeUndefined();
    expect(judgeFault({ ...sound, limits: { minimumN: 5, warningN: 5, nominalN: 5, maximumN: 5 } })).toBeUndefined();
    expect(judgeFault({ ...sound, degreesOfFreedom: 1 - 1e-15 })).toBeUndefined();
    // An act limit under the caution limit leaves caution nothing to say, but is no contradiction.
    expect(judgeFault({ ...sound, actDrop: 0.05 })).toBeUndefined();
    expect(judgeFault({ ...sound, valueN: undefined, standardUncertaintyN: NaN })).toBeUndefined();
  });

  it.each<[string, Partial<JudgeInput>]>([
    ["valueN", { valueN: NaN }],
    ["valueN", { valueN: -Infinity }],
    ["standardUncertaintyN", { standardUncertaintyN: 0 }],
    ["standardUncertaintyN", { standardUncertaintyN: -1 }],
    ["standardUncertaintyN", { standardUncertaintyN: NaN }],
    ["standardUncertaintyN", { standardUncertaintyN: Infinity }],
    ["degreesOfFreedom", { degreesOfFreedom: 0 }],
    ["degreesOfFreedom", { degreesOfFreedom: 0.9 }],
    ["limits.minimumN", { limits: { minimumN: NaN } }],
    ["limits.minimumN", { limits: { minimumN: 2, maximumN: 1 } }],
    ["limits.warningN", { limits: { warningN: 2, nominalN: 1 } }],
    ["limits.nominalN", { limits: { minimumN: 1, nominalN: 3, maximumN: 2 } }],
    ["coverageFactor", { rule: { rule: "guarded", coverageFactor: 0 } }],
    ["coverageFactor", { rule: { rule: "guarded", coverageFactor: NaN } }],
    ["guardFactor", { rule: { rule: "ilacG8", guardFactor: -1 } }],
    ["guardFactor", { rule: { rule: "guarded", guardFactor: NaN } }],
    ["threshold", { rule: { rule: "probability", threshold: 95 } }],
    ["threshold", { rule: { rule: "probability", threshold: 1 } }],
    ["threshold", { rule: { rule: "probability", threshold: 0 } }],
    ["baselineN", { baseline: { valueN: 0 } }],
    ["baselineStandardUncertaintyN", { baseline: { valueN: 1, standardUncertaintyN: -1 } }],
    ["baselineCorrelation", { baseline: { valueN: 1, correlation: 1.5 } }],
    ["previousN", { previous: { valueN: -1 } }],
    ["previousCorrelation", { previous: { valueN: 1, correlation: NaN } }],
    ["cautionDrop", { cautionDrop: 10 }],
    ["actDrop", { actDrop: -0.1 }],
  ])("names %s in %j", (field, over) => {
    expect(judgeFault({ ...sound, ...over })).toMatch(new RegExp(`^${field.replace(".", "\\.")}`));
  });
});
