import type { GaugeProofs, ProofPage, ProofRow } from "../../app/contract/proofViews.ts";
import type { Db } from "../store/db.ts";
import { readGauge } from "../store/records/gauges.ts";
import { readOperator } from "../store/records/operators.ts";
import { type FiledProof, proofsOf, readProof } from "../store/records/proofs.ts";
import { adjustmentsOf, readAdjustment } from "../store/records/references.ts";
import { driftOf, nextDueOf, provedHistory } from "./provedHistory.ts";

/** A gauge's proofs as its page shows them. */
export function gaugeProofs(db: Db, gaugeId: string): GaugeProofs {
  const filed = proofsOf(db, gaugeId);
  const usedId = readGauge(db, gaugeId)?.curve?.proofId;
  return {
    rows: filed.map((one) => toProofRow(one, usedId)).toReversed(),
    adjustments: adjustmentsOf(db, gaugeId),
    drift: driftOf(filed),
    nextDue: nextDueOf(provedHistory(filed)),
  };
}

/**
 * A filed proof with all that a reader or a report asks for; undefined where there is none.
 * @param byInitials  people are shown so on this PC
 */
export function proofPage(db: Db, proofId: string, byInitials = false): ProofPage | undefined {
  const filed = readProof(db, proofId);
  if (filed === undefined) return undefined;
  const { proof, origin, seq, hash } = filed;
  const all = proofsOf(db, proof.gaugeId);
  const upToThis = all.slice(0, all.findIndex((p) => p.proof.proofId === proofId) + 1);
  const other = otherOf(all, filed);
  const adjustmentId = proof.as === "left" ? proof.adjustmentId : (other?.proof.adjustmentId ?? null);
  return {
    proof,
    row: toProofRow(filed, readGauge(db, proof.gaugeId)?.curve?.proofId),
    operatorName: proof.operatorId === null ? undefined : nameOf(db, proof.operatorId, byInitials),
    adjustment: adjustmentId === null ? undefined : readAdjustment(db, adjustmentId),
    other: other?.proof,
    drift: driftOf(upToThis),
    nextDue: nextDueOf(provedHistory(upToThis)),
    origin,
    seq,
    hash,
  };
}

function nameOf(db: Db, operatorId: string, byInitials: boolean): string | undefined {
  const person = readOperator(db, operatorId)?.person;
  return byInitials ? person?.initials : person?.name;
}

/** As found and as left belong together where nothing but the adjustment lies between them. */
function otherOf(all: readonly FiledProof[], one: FiledProof): FiledProof | undefined {
  const at = all.findIndex((p) => p.proof.proofId === one.proof.proofId);
  const [found, left] = one.proof.as === "left" ? [all[at - 1], one] : [one, all[at + 1]];
  const isPair = found?.proof.as === "found" && left?.proof.as === "left" && left.proof.adjustmentId !== null;
  return isPair ? (one === left ? found : left) : undefined;
}

function toProofRow({ proof }: FiledProof, usedId: string | undefined): ProofRow {
  const shares = proof.result?.steps.flatMap((s) => s.uncertainty.expandedPct ?? []) ?? [];
  return {
    proofId: proof.proofId,
    gaugeId: proof.gaugeId,
    adapterId: proof.adapterId ?? undefined,
    on: proof.on,
    provedAtMs: Date.parse(proof.provedAt),
    as: proof.as,
    method: proof.plan.method,
    judged: proof.judged,
    class: proof.result?.class ?? undefined,
    curveTaken: proof.curveTaken,
    inUse: proof.proofId === usedId,
    change: proof.change,
    worstPct: shares.length === 0 ? undefined : Math.max(...shares),
    dueOn: proof.dueOn ?? undefined,
  };
}
