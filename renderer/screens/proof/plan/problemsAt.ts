import type { ProofPlan } from "../../../../app/proof/plan/ProofPlan.ts";
import type { PlanProblem } from "../../../../app/proof/plan/planProblems.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import type { Speech } from "../../../words/Speech.ts";
import { problemTexts } from "../words/problemTexts.ts";

/** The field a problem is said at: a load by its place, else a part of the form. */
export function fieldOf(problem: PlanProblem, plan: ProofPlan): string {
  switch (problem.code) {
    case "noLoads":
    case "loadsNotRising":
    case "aboveGaugeCapacity":
    case "aboveReferenceCapacity":
    case "notOnRig": {
      const at = plan.loadsN.indexOf(Number(problem.about));
      return problem.about === undefined || at === -1 ? "loads" : `load${at}`;
    }
    case "sameLoadTwice":
      return `load${plan.loadsN.lastIndexOf(Number(problem.about))}`;
    case "tooFewLoads":
      return "loads";
    case "runTwice":
      return `run${plan.runs.findLastIndex(({ run }) => run === problem.about)}`;
    case "noRuns":
    case "tooFewRuns":
    case "tooFewPositions":
    case "noRepeat":
      return "runs";
    case "noReversibilityOrCreep":
      return "creep";
    case "referencePastDue":
      return "reference";
    case "badTimes":
      return "read";
  }
}

const forces: readonly PlanProblem["code"][] = [
  "noLoads",
  "loadsNotRising",
  "sameLoadTwice",
  "aboveGaugeCapacity",
  "aboveReferenceCapacity",
  "notOnRig",
];

/** The problem as a sentence in the reader's language. */
export function problemWords({ code, about = "" }: PlanProblem, speech: Speech, unit: ForceUnit): string {
  const said = problemTexts[speech.language][code];
  if (typeof said === "string") return said;
  if (forces.includes(code)) return said(speech.force(Number(about), unit));
  return said(code === "referencePastDue" ? speech.plainDate(String(about)) : String(about));
}
