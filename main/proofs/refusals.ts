import type { TakeRefusal } from "../../app/contract/proofViews.ts";
import { AppError } from "../../app/contract/result.ts";
import type { PlanProblem } from "../../app/proof/plan/planProblems.ts";

const words: Readonly<Record<TakeRefusal, string>> = {
  notNext: "This is not what comes next. Look at the list: it shows the act that is asked for.",
  putDown: "The proof is put down. Take it up again first.",
  finished: "Everything in the plan has been taken. File it, or take an act again with a reason.",
  notSteady: "The load is not steady yet. Wait until both bars stand in the steady part.",
  waiting: "The load has not stood long enough yet. Wait until the time is over.",
  overload: "The gauge says overload. Take the load off; a gauge that was overloaded is proved anew from the start.",
  linkLost: "The port was lost while this was read. Nothing was taken; what was taken before stands.",
  aboveCapacity: "This load lies above a capacity in the load train. Take it off slowly.",
  offTarget: "The load is more than 5 % from its target. Bring it there, or skip the step with a reason.",
  notUnloaded: "The gauge is not unloaded. Take all load off for the zero.",
  sameLoadTwice: "This is the load that was taken just before. Change the load first.",
  reasonMissing: "A reason is needed.",
  neverTaken: "This has not been taken yet, so it cannot be taken again.",
  notPutDown: "The proof is not put down.",
  noLink: "No gauge is being read. Connect it, or type the values in.",
  noReferenceLink: "The reference is not being read. Open its port.",
  otherGauge: "The gauge that is connected is not the one this proof is of. Connect that one, or discard the proof.",
  tooFewReadings: "Too few readings have come yet. Wait a moment.",
};

export const takeRefused = (why: TakeRefusal) => new AppError("refused", words[why], { key: `proof.${why}` });

const startWords = {
  another: "Another proof is in work. File it or discard it first.",
  seriesInWork: "Clampings wait on the Measure page. File or clear that series first.",
} as const;

export const startRefused = (why: keyof typeof startWords) =>
  new AppError("conflict", startWords[why], { key: `proof.${why}` });

const planWords: Readonly<Record<PlanProblem["code"], string>> = {
  noLoads: "A plan needs loads above zero.",
  loadsNotRising: "The loads must rise from step to step.",
  sameLoadTwice: "The same load stands twice in the plan.",
  aboveGaugeCapacity: "A load lies above the gauge's capacity.",
  aboveReferenceCapacity: "A load lies above the reference's capacity.",
  noRuns: "A plan needs at least one run.",
  runTwice: "Two runs bear the same name.",
  tooFewRuns: "The method asks for more runs: no class will come of it.",
  tooFewPositions: "The method asks for more mounting positions: no class will come of it.",
  noRepeat: "The method asks for two runs at the same position.",
  noReversibilityOrCreep: "The method asks for falling loads in two runs, or creep readings.",
  tooFewLoads: "The method asks for more loads.",
  referencePastDue: "The reference is past its due date.",
  notOnRig: "The rig's weights give no load near this one. Change the plan's loads, or add a weight.",
  badTimes: "The times of a plan are not below zero, and a reading takes some time.",
};

/** The first problem that stops a plan, as a refusal; undefined when none does. */
export function planRefused(problems: readonly PlanProblem[]): AppError | undefined {
  const stops = problems.find((p) => p.stops);
  return stops && new AppError("invalid", planWords[stops.code], { key: `plan.${stops.code}`, field: "plan" });
}
