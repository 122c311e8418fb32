import type { Parsed } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import { clearProofDraft } from "../store/proofDraft.ts";
import { proofsOf } from "../store/records/proofs.ts";
import { adjustmentsOf } from "../store/records/references.ts";
import type { Store } from "../store/Store.ts";
import { appendProof } from "./appendProof.ts";
import { outcomeOf } from "./outcomeOf.ts";
import type { ProofDraft } from "./ProofDraft.ts";
import { proofBody } from "./proofBody.ts";
import { proofTables } from "./proofTables.ts";

export type FileDeps = {
  readonly store: Store;
  readonly now: () => number;
  readonly today: () => string;
  readonly version: string;
};

/**
 * Files the proof in work: its entry, the gauge's new curve where it is taken, and the end of the draft, in one transaction.
 * @throws AppError  nothing taken yet, a curve that cannot be taken, a clock before the last entry, a file that cannot be written
 */
export function fileProof(
  draft: ProofDraft,
  input: Parsed<"proof.file">,
  { store, now, today, version }: FileDeps,
): void {
  if (!draft.planned.events.some((e) => e.kind === "taken"))
    throw new AppError("refused", "Nothing has been taken yet. Take a reading first, or discard the proof.", {
      key: "proof.nothingTaken",
    });
  if (store.refusal !== undefined) throw new AppError("readOnly", store.refusal.message, { key: "readOnly" });
  const provedAtMs = now();
  const last = store.lastEntryAtMs();
  const isBehind = last !== undefined && provedAtMs < last;
  if (isBehind && input.clockConfirmed !== true)
    throw new AppError(
      "refused",
      "The clock of this PC stands before the last entry in the records. Set it right, or say that it is right and file again.",
      { key: "clockBehind" },
    );
  const gaugeId = draft.gauge.gaugeId;
  const outcome = outcomeOf(draft, proofsOf(store.db, gaugeId), today(), proofTables(store.db));
  if (input.takeCurve === true && outcome.curveRefused !== undefined)
    throw new AppError("refused", `The gauge cannot be corrected with this curve: ${outcome.curveRefused}.`, {
      key: "proof.curveRefused",
      field: "takeCurve",
    });
  const usable = outcome.curve !== undefined && outcome.curveRefused === undefined;
  const curveTaken = usable && (input.takeCurve ?? outcome.judged === "good");
  const dueOn = curveTaken ? (input.dueOn ?? outcome.nextDue?.on ?? null) : (input.dueOn ?? null);
  const body = proofBody(draft, outcome, {
    provedAtMs,
    offsetMinutes: 0 - new Date(provedAtMs).getTimezoneOffset(),
    on: today(),
    adjustmentId: draft.as === "left" ? (adjustmentsOf(store.db, gaugeId).at(-1)?.adjustmentId ?? null) : null,
    curveTaken,
    dueOn,
    programVersion: version,
    clockDoubtful: isBehind,
  });
  appendProof(store, body, clearProofDraft);
}
