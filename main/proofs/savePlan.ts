import type { Parsed } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import type { StoredPlan } from "../../app/ledger/proof.ts";
import { planProblems } from "../../app/proof/plan/planProblems.ts";
import { planRefused } from "./refusals.ts";

/**
 * A plan as it is kept under its name.
 * @param kept  all plans there are, retired ones too
 * @throws AppError  what stops a plan, or another plan in use bears the name
 */
export function checkedPlan(input: Parsed<"plans.save">, kept: readonly StoredPlan[], planId: string): StoredPlan {
  // No gauge is named yet: its capacity is asked when the plan is begun.
  const refused = planRefused(planProblems(input, Number.POSITIVE_INFINITY));
  if (refused !== undefined) throw refused;
  const same = (other: StoredPlan) =>
    other.planId !== planId && other.state === "inUse" && named(other) === named(input);
  if (input.state === "inUse" && kept.some(same))
    throw new AppError("invalid", "There is a plan of this name already. Choose another name, or change that one.", {
      key: "plan.nameTaken",
      field: "name",
    });
  return { ...input, planId };
}

const named = ({ name }: { readonly name: string }) => name.trim().toLowerCase();
