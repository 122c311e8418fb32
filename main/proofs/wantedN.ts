import { nextAct } from "../../app/proof/plan/nextAct.ts";
import type { ProofDraft } from "./ProofDraft.ts";
import { hangFor } from "./weights.ts";

/** Force the next act waits for: the plan's target, or what the weights that come nearest to it give. */
export function wantedN({ planned, reference, referenceRead, about }: ProofDraft): number {
  const next = nextAct(planned);
  const targetN = next.kind === "act" && next.act.kind === "read" ? next.act.targetN : 0;
  return targetN > 0 && referenceRead === "weights" && reference.weights !== undefined
    ? hangFor(reference.weights, about.conditions, targetN).forceN
    : targetN;
}
