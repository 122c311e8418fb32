import { type ProofPlan, presetPlan, proofMethods } from "./ProofPlan.ts";

const usual: ReadonlySet<string> = new Set(proofMethods.map((method) => presetPlan(method, 1).name));

/** The name a laboratory gave its plan; undefined for a method's usual plan, or one changed since it was chosen. */
export function ownPlanName({ name }: Pick<ProofPlan, "name">): string | undefined {
  return usual.has(name) ? undefined : name;
}
