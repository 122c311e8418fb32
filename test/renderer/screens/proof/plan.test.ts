import { describe, expect, it } from "vitest";
import { presetPlan, proofMethods } from "../../../../app/proof/plan/ProofPlan.ts";
import { planProblems } from "../../../../app/proof/plan/planProblems.ts";
import { draftOf, planOf, planSize, usualDraft } from "../../../../renderer/screens/proof/plan/planDraft.ts";
import { fieldOf, problemWords } from "../../../../renderer/screens/proof/plan/problemsAt.ts";
import { createSpeech } from "../../../../renderer/words/Speech.ts";

describe("the plan in the fields", () => {
  it.each(proofMethods)("gives the usual plan of %s back as it was", (method) => {
    for (const unit of ["kN", "lbf"] as const) {
      const { plan } = planOf(usualDraft(method, 25_000, unit), unit);
      const wanted = presetPlan(method, 25_000);
      expect({ ...plan, loadsN: [] }).toEqual({ ...wanted, loadsN: [] });
      for (const [i, load] of plan!.loadsN.entries()) expect(Math.abs(load / wanted.loadsN[i]! - 1)).toBeLessThan(1e-9);
    }
  });

  it("reads a decimal comma, and says which field holds no figure", () => {
    const usual = usualDraft("working", 20_000, "kN");
    expect(planOf({ ...usual, loads: ["2,5", "5"] }, "kN").plan!.loadsN).toEqual([2500, 5000]);
    const { plan, faults } = planOf(
      { ...usual, loads: ["2", "five"], preloads: "1.5", rest: "-1", runs: [{ ...usual.runs[0]!, position: "400" }] },
      "kN",
    );
    expect(plan).toBeUndefined();
    expect(Object.fromEntries(faults)).toEqual({
      load1: "noNumber",
      preloads: "wholeNumber",
      rest: "zeroOrMore",
      position0: "degrees",
    });
  });

  it("counts the readings a plan takes", () => {
    // Three runs of five loads, each with a zero before and after.
    expect(planSize(presetPlan("working", 20_000)).readings).toBe(3 * (5 + 2));
  });
});

describe("what speaks against a plan", () => {
  const plan = presetPlan("working", 10_000);
  const placed = (changed: Partial<typeof plan>) => {
    const made = { ...plan, ...changed };
    return planProblems(made, 10_000).map((problem) => [problem.code, fieldOf(problem, made)]);
  };

  it("is said at the load, the run or the part it is about", () => {
    expect(placed({ loadsN: [2000, 6000, 4000, 12_000] })).toEqual([
      ["loadsNotRising", "load2"],
      ["aboveGaugeCapacity", "load3"],
    ]);
    expect(placed({ loadsN: [2000, 4000, 4000] })).toEqual([["sameLoadTwice", "load2"]]);
    expect(placed({ loadsN: [] })[0]).toEqual(["noLoads", "loads"]);
    expect(placed({ runs: [plan.runs[0]!, plan.runs[0]!] })).toEqual([["runTwice", "run1"]]);
    expect(placed({ readS: 0 })).toEqual([["badTimes", "read"]]);
    expect(placed({ method: "iso376" }).map(([, field]) => field)).toEqual(["loads", "runs", "runs", "creep"]);
  });

  it("is a sentence with its figure in both languages", () => {
    const problem = { code: "aboveGaugeCapacity", stops: true, about: 12_000 } as const;
    const say = (language: "en" | "de") =>
      problemWords(problem, createSpeech(language, language), "kN").replaceAll("\u00a0", " ");
    expect(say("en")).toBe("12.00 kN lies above the gauge's capacity.");
    expect(say("de")).toBe("12,00 kN liegt über der Nennlast des Messgeräts.");
  });

  it("keeps the plan of an unfinished draft as it was typed", () => {
    expect(draftOf({ ...plan, loadsN: [2500] }, "kN").loads).toEqual(["2.5"]);
  });
});
