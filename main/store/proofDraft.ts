import { type Db, prepared } from "./db.ts";
import { putRow } from "./sealedRow.ts";

/** The proof in work as it was last saved: outside the chain, gone once it is filed or thrown away. */
export function loadProofDraft(db: Db): unknown {
  const body = prepared<string>(db, "SELECT body FROM proof_draft WHERE id = 1").pluck().get();
  return body === undefined ? undefined : JSON.parse(body);
}

/** Call it inside `store.write`. */
export function saveProofDraft(db: Db, body: unknown, savedAtMs: number): void {
  putRow(db, "proof_draft", { id: 1, body: JSON.stringify(body), saved_at_ms: savedAtMs });
}

/** Call it inside `store.write`, or in `alsoInTransaction` of the filing. */
export function clearProofDraft(db: Db): void {
  prepared(db, "DELETE FROM proof_draft").run();
}
