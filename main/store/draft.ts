import { type Db, prepared } from "./db.ts";
import { putRow } from "./sealedRow.ts";

/** The series in work as it was last saved: outside the chain, gone once it is filed. */
export type SavedDraft = {
  /** Plain JSON of the session's own making. */
  readonly body: unknown;
  /** How far into the spool the draft has seen; replay goes on from here. */
  readonly spoolPosition: number;
  readonly savedAtMs: number;
};

export function loadDraft(db: Db): SavedDraft | undefined {
  const row = prepared<{ body: string; spool_position: number; saved_at_ms: number }>(
    db,
    "SELECT body, spool_position, saved_at_ms FROM draft WHERE id = 1",
  ).get();
  return row && { body: JSON.parse(row.body), spoolPosition: row.spool_position, savedAtMs: row.saved_at_ms };
}

/** Call it inside `store.write`, or in `alsoInTransaction` when the draft goes with the check that was made of it. */
export function saveDraft(db: Db, { body, spoolPosition, savedAtMs }: SavedDraft): void {
  putRow(db, "draft", { id: 1, body: JSON.stringify(body), spool_position: spoolPosition, saved_at_ms: savedAtMs });
}

export function clearDraft(db: Db): void {
  prepared(db, "DELETE FROM draft").run();
}
