import { daysBetween, type PlainDate } from "../data/plainDate.ts";
import type { ReferenceTransducer } from "../reference/ReferenceTransducer.ts";
import type { ProofMethod, ProofPlan } from "./ProofPlan.ts";

/** What speaks against a plan. `stops`: it cannot be begun; else it can, and the report says so. */
export type PlanProblem = {
  readonly code:
    | "noLoads"
    | "loadsNotRising"
    | "sameLoadTwice"
    | "aboveGaugeCapacity"
    | "aboveReferenceCapacity"
    | "noRuns"
    | "runTwice"
    | "tooFewRuns"
    | "tooFewPositions"
    | "noRepeat"
    | "noReversibilityOrCreep"
    | "tooFewLoads"
    | "referencePastDue"
    | "badTimes"
    | "notOnRig";
  readonly stops: boolean;
  /** The load in newtons, the run's label, or the number the method needs. */
  readonly about?: string | number | undefined;
};

/** What each method asks for; ISO 376 and E74 from memory, the other two common practice, no source. */
const needs: Readonly<
  Record<ProofMethod, { readonly runs: number; readonly positions: number; readonly loads: number }>
> = {
  polynomial: { runs: 2, positions: 1, loads: 4 },
  iso376: { runs: 4, positions: 3, loads: 8 },
  "astm-e74": { runs: 3, positions: 1, loads: 10 },
  working: { runs: 2, positions: 1, loads: 3 },
};

/**
 * Everything a plan should be asked before its first load.
 * @param today  absent, or no reference transducer: due dates are not looked at
 * @returns  what stops the plan first
 */
export function planProblems(
  plan: ProofPlan,
  gaugeCapacityN: number,
  reference?: ReferenceTransducer,
  today?: PlainDate,
): readonly PlanProblem[] {
  const problems: PlanProblem[] = [];
  const say = (code: PlanProblem["code"], stops: boolean, about?: string | number) =>
    problems.push({ code, stops, about });
  if (plan.loadsN.length === 0) say("noLoads", true);
  for (const [i, load] of plan.loadsN.entries()) {
    const before = plan.loadsN[i - 1] ?? 0;
    if (!(load > 0 && Number.isFinite(load))) say("noLoads", true, load);
    else if (load === before) say("sameLoadTwice", true, load);
    else if (load < before) say("loadsNotRising", true, load);
    // A load given as a share of the capacity may come out a rounding above it.
    if (load > gaugeCapacityN * (1 + 1e-9)) say("aboveGaugeCapacity", true, load);
    if (reference !== undefined && load > reference.capacityN * (1 + 1e-9)) say("aboveReferenceCapacity", true, load);
  }
  if (
    ![plan.dwellS, plan.readS, plan.restS, plan.preloads].every((v) => v >= 0 && Number.isFinite(v)) ||
    plan.readS === 0
  )
    say("badTimes", true);
  if (plan.runs.length === 0) say("noRuns", true);
  const labels = plan.runs.map((r) => r.run);
  const twice = labels.find((label, i) => labels.indexOf(label) !== i);
  if (twice !== undefined) say("runTwice", true, twice);
  weakensMethod(plan, say);
  if (reference !== undefined && today !== undefined && daysBetween(today, reference.dueOn) < 0)
    say("referencePastDue", false, reference.dueOn);
  return problems.toSorted((a, b) => Number(b.stops) - Number(a.stops));
}

/** What costs the class or the uncertainty, but not the readings. */
function weakensMethod(
  { method, loadsN, runs, creep }: ProofPlan,
  say: (code: PlanProblem["code"], stops: boolean, about?: number) => void,
): void {
  const need = needs[method];
  const positions = new Set(runs.map((r) => r.positionDeg)).size;
  if (loadsN.length < need.loads) say("tooFewLoads", false, need.loads);
  if (runs.length < need.runs) say("tooFewRuns", false, need.runs);
  if (positions < need.positions) say("tooFewPositions", false, need.positions);
  if (method !== "iso376") return;
  if (positions === runs.length) say("noRepeat", false);
  if (!creep && runs.filter((r) => r.falling).length < 2) say("noReversibilityOrCreep", false);
}
