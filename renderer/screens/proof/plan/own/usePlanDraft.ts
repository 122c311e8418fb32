import { useState } from "react";
import type { StoredPlan } from "../../../../../app/ledger/proof.ts";
import { type ProofMethod, type ProofPlan, presetPlan } from "../../../../../app/proof/plan/ProofPlan.ts";
import type { ForceUnit } from "../../../../../app/quantity/forceUnits.ts";
import { draftOf, type PlanDraft, type PlanFault, planOf, usualDraft } from "../planDraft.ts";

export type PlanInWork = {
  readonly draft: PlanDraft;
  /** What would be begun; undefined where a field holds no figure. */
  readonly plan: ProofPlan | undefined;
  readonly faults: ReadonlyMap<string, PlanFault>;
  /** The own plan the fields came from, and whether they say something else by now. */
  readonly chosen: StoredPlan | undefined;
  readonly changed: boolean;
  readonly setDraft: (draft: PlanDraft) => void;
  /** The method's usual plan. */
  readonly chooseMethod: (method: ProofMethod) => void;
  readonly choosePlan: (plan: StoredPlan) => void;
};

/** The plan in the form: a method's usual one or an own one, and what was changed in it since. */
export function usePlanDraft(first: ProofMethod, capacityN: number, unit: ForceUnit): PlanInWork {
  const [draft, setDraft] = useState(() => usualDraft(first, capacityN, unit));
  const [chosen, setChosen] = useState<StoredPlan>();
  const read = planOf(draft, unit);
  const changed = chosen !== undefined && !sameText(draft, draftOf(chosen, unit));
  return {
    draft,
    // As it was kept, to the last digit: the fields round. Changed, it bears the name no more.
    plan:
      chosen !== undefined && !changed
        ? planFieldsOf(chosen)
        : read.plan && { ...read.plan, name: presetPlan(draft.method, capacityN).name },
    faults: read.faults,
    chosen,
    changed,
    setDraft,
    chooseMethod: (method) => {
      setChosen(undefined);
      setDraft(usualDraft(method, capacityN, unit));
    },
    choosePlan: (plan) => {
      setChosen(plan);
      setDraft(draftOf(plan, unit));
    },
  };
}

const sameText = (a: PlanDraft, b: PlanDraft) => JSON.stringify(a) === JSON.stringify({ ...b, name: a.name });

function planFieldsOf({ planId: _id, note: _note, state: _state, ...plan }: StoredPlan): ProofPlan {
  return plan;
}
