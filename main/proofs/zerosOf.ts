import { standingOf } from "../../app/proof/plan/nextAct.ts";
import type { ProofState } from "../../app/proof/plan/ProofState.ts";
import { proofActs } from "../../app/proof/plan/proofActs.ts";

export type Zeros = { readonly gaugeN: number; readonly referenceN: number };

/** What gauge and reference showed at the last zero before an act; undefined before the first. */
export function zerosBefore(planned: ProofState, index: number): Zeros | undefined {
  const standing = standingOf(planned);
  const at = proofActs(planned.plan).findLastIndex(
    (act, i) => i < index && act.kind === "read" && act.direction === "zeroBefore" && standing[i]!.taking !== undefined,
  );
  const taking = standing[at]?.taking;
  return taking && { gaugeN: taking.indicationN, referenceN: taking.referenceShownN ?? 0 };
}
