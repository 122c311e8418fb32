import { describe, expect, it } from "vitest";
import { remarkSentence } from "../../../../app/proof/data/ProofRemark.ts";
import { plausibility } from "../../../../app/proof/data/plausibility.ts";
import { type LoadCellClass, loadCellLimits } from "../../../../app/proof/tables/loadCellLimits.ts";
import published from "../../../published/oiml-r60-load-cell.json" with { type: "json" };

// OIML R 60-1:2021; creep and zero rules found in a public copy, the steps of table 4 from memory.
describe("loadCellLimits", () => {
  it("meets the worked example", () => {
    const { inputs, expected } = published.worked_example;
    const got = loadCellLimits(inputs.cls as LoadCellClass, inputs.load_v, inputs.p_LC);
    expect(got.error).toBeCloseTo(expected.mpe_v, 9);
    expect(got.creep).toBeCloseTo(expected.creep_30_min_limit_v, 9);
    expect(got.lateCreep).toBeCloseTo(expected.creep_20_30_limit_v, 9);
    expect((100 * got.creep) / inputs.intervals).toBeCloseTo(expected.creep_30_min_limit_percent_of_load, 9);
    expect(got.zeroReturn).toBe(0.5);
  });

  it("steps up at the ends of the published table, an end counting below", () => {
    for (const [accuracy, ends] of Object.entries(published.rules.steps_v) as [LoadCellClass, number[]][]) {
      const errors = [ends[0]!, ends[0]! + 1, ends[1]!, ends[1]! + 1].map(
        (load) => loadCellLimits(accuracy, load, 0.5).error,
      );
      expect(errors).toEqual([0.25, 0.5, 0.5, 0.75]);
    }
  });

  it("keeps the creep's share at 0.7, whatever the cell declares", () => {
    expect(loadCellLimits("C", 400, 0.3).creep).toBe(loadCellLimits("C", 400, 0.8).creep);
  });

  it.each([
    ["C", 20_000, 0.7, /ends at 10000/],
    ["C", -1, 0.7, /at or above 0/],
    ["C", 100, 0.9, /between 0.3 and 0.8/],
  ] as const)("refuses class %s at %s intervals with share %s", (accuracy, load, share, words) => {
    expect(() => loadCellLimits(accuracy, load, share)).toThrow(words);
  });
});

describe("plausibility", () => {
  it("is silent for a sound gauge and for one without data", () => {
    expect(plausibility({ f0: 0.05, c: -0.07 })).toEqual([]);
    expect(plausibility({ f0: undefined, c: undefined })).toEqual([]);
  });

  it("remarks a zero change over 0.05 % and a creep over 0.0735 %", () => {
    const remarks = plausibility({ f0: -0.06, c: 0.08 });
    expect(remarks.map((r) => r.code)).toEqual(["zeroChangeLarge", "creepLarge"]);
    expect(remarkSentence(remarks[0]!)).toContain("(0.060 % over 0.050 %)");
  });
});
