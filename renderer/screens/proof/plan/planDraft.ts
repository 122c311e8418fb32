import { type ProofMethod, type ProofPlan, presetPlan } from "../../../../app/proof/plan/ProofPlan.ts";
import { proofActs } from "../../../../app/proof/plan/proofActs.ts";
import { type ForceUnit, fromNewtons, toNewtons } from "../../../../app/quantity/forceUnits.ts";
import { figureText, parseNumber } from "../../../words/parseNumber.ts";

/** A plan as it stands in the fields; figures are read when it is used. */
export type PlanDraft = {
  readonly name: string;
  readonly method: ProofMethod;
  readonly loads: readonly string[];
  readonly preloads: string;
  readonly runs: readonly { readonly run: string; readonly position: string; readonly falling: boolean }[];
  readonly creep: boolean;
  readonly dwell: string;
  readonly read: string;
  readonly rest: string;
};

/** The method's usual plan for a gauge of this capacity, in the unit shown. */
export function usualDraft(method: ProofMethod, capacityN: number, unit: ForceUnit): PlanDraft {
  return draftOf(presetPlan(method, capacityN), unit);
}

export function draftOf(plan: ProofPlan, unit: ForceUnit): PlanDraft {
  return {
    name: plan.name,
    method: plan.method,
    loads: plan.loadsN.map((load) => figureText(fromNewtons(load, unit))),
    preloads: figureText(plan.preloads),
    runs: plan.runs.map(({ run, positionDeg, falling }) => ({ run, position: figureText(positionDeg), falling })),
    creep: plan.creep,
    dwell: figureText(plan.dwellS),
    read: figureText(plan.readS),
    rest: figureText(plan.restS),
  };
}

/** Fields that cannot be read as what they ask for, by their name. */
export type PlanFault = "noNumber" | "wholeNumber" | "zeroOrMore" | "degrees" | "labelNeeded";

/**
 * The plan in the fields.
 * @returns  `faults` where a field holds no figure: then there is no plan yet
 */
export function planOf(
  draft: PlanDraft,
  unit: ForceUnit,
): { readonly plan: ProofPlan | undefined; readonly faults: ReadonlyMap<string, PlanFault> } {
  const faults = new Map<string, PlanFault>();
  const figure = (field: string, typed: string, wanted: (value: number) => boolean, fault: PlanFault): number => {
    const value = parseNumber(typed);
    if (typeof value !== "number") faults.set(field, "noNumber");
    else if (!wanted(value)) faults.set(field, fault);
    return typeof value === "number" ? value : 0;
  };
  const plan: ProofPlan = {
    name: draft.name,
    method: draft.method,
    loadsN: draft.loads.map((load, i) =>
      toNewtons(
        figure(`load${i}`, load, () => true, "noNumber"),
        unit,
      ),
    ),
    preloads: figure("preloads", draft.preloads, (v) => Number.isInteger(v) && v >= 0 && v <= 20, "wholeNumber"),
    runs: draft.runs.map(({ run, position, falling }, i) => {
      if (run.trim() === "") faults.set(`run${i}`, "labelNeeded");
      return {
        run: run.trim(),
        positionDeg: figure(`position${i}`, position, (v) => v >= 0 && v <= 360, "degrees"),
        falling,
      };
    }),
    creep: draft.creep,
    dwellS: figure("dwell", draft.dwell, (v) => v >= 0, "zeroOrMore"),
    readS: figure("read", draft.read, (v) => v >= 0, "zeroOrMore"),
    restS: figure("rest", draft.rest, (v) => v >= 0, "zeroOrMore"),
  };
  return { plan: faults.size === 0 ? plan : undefined, faults };
}

/** How many readings a plan takes, and about how long, counting 20 s for each load to be brought on. */
export function planSize(plan: ProofPlan): { readonly readings: number; readonly minutes: number } {
  const acts = proofActs(plan);
  const reads = acts.filter((act) => act.kind === "read");
  const waiting = reads.reduce((sum, act) => sum + act.waitS + act.readS, 0);
  return { readings: reads.length, minutes: Math.ceil((waiting + 20 * (acts.length - 1)) / 60) };
}
