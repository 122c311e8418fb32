import type { Proof } from "../../../app/ledger/proof.ts";
import type { Db } from "../db.ts";
import { entriesOfKind } from "../ledger/readEntry.ts";
import { putRow } from "../sealedRow.ts";

/** A proof is found by its gauge; everything else is read from its entry, for a gauge has few. */
export function applyProof(db: Db, { proofId, gaugeId, adapterId, on }: Proof, n: number): void {
  putRow(db, "proof_row", { proof_id: proofId, gauge_id: gaugeId, adapter_id: adapterId, proved_on: on, n });
}

/** For a file from before there was the table. */
export function fillProofRows(db: Db): void {
  for (const { body, n } of entriesOfKind(db, "proof")) if (body.proofId !== undefined) applyProof(db, body, n);
}
