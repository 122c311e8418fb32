import type { GaugeCurve } from "../../app/correction/GaugeCurve.ts";
import { driftOfProofs, type ProofDrift, type ProvedOn } from "../../app/proof/after/driftOfProofs.ts";
import { defaultIntervalRule, type NextDue, nextProofDue } from "../../app/proof/after/nextProofDue.ts";
import type { FiledProof } from "../store/records/proofs.ts";

/**
 * A gauge's proofs as a history: as found and as left around one adjustment are one point. Proofs with an adapter, or
 * without a curve, say nothing of the gauge alone.
 * @param proofs  oldest first
 */
export function provedHistory(proofs: readonly FiledProof[]): readonly ProvedOn[] {
  const history: { on: string; asFound: GaugeCurve; asLeft?: GaugeCurve }[] = [];
  let found: string | undefined; // id of the proof as found that the last point came from
  for (const { proof } of proofs) {
    if (proof.curve === null || proof.adapterId !== null) continue;
    const last = history.at(-1);
    if (proof.as === "left" && last !== undefined && found !== undefined) {
      last.asLeft = proof.curve;
      last.on = proof.on;
      found = undefined;
    } else {
      history.push({ on: proof.on, asFound: proof.curve });
      found = proof.as === "found" ? proof.proofId : undefined;
    }
  }
  return history;
}

export function driftOf(proofs: readonly FiledProof[]): ProofDrift {
  return driftOfProofs(provedHistory(proofs));
}

/** When the next proof is due after the last of a history; undefined for none. */
export function nextDueOf(history: readonly ProvedOn[]): NextDue | undefined {
  const last = history.at(-1);
  return last && nextProofDue(last.on, driftOfProofs(history), defaultIntervalRule);
}
