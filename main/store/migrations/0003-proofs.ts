import type { Migration } from "../migrate.ts";
import { fillProofRows } from "../projections/proofRow.ts";

/** Where each gauge's proofs lie in the ledger, and the proof in work, which is kept like the series in work. */
export const proofs: Migration = {
  version: 3,
  up(db) {
    db.exec(`
      CREATE TABLE proof_row (
        proof_id TEXT PRIMARY KEY,
        gauge_id TEXT NOT NULL,
        adapter_id TEXT,
        proved_on TEXT NOT NULL,
        n INTEGER NOT NULL,
        sum INTEGER NOT NULL
      ) STRICT, WITHOUT ROWID;
      CREATE INDEX proof_by_gauge ON proof_row (gauge_id, proved_on, n);

      CREATE TABLE proof_draft (
        id INTEGER PRIMARY KEY CHECK (id = 1),
        body TEXT NOT NULL,
        saved_at_ms INTEGER NOT NULL,
        sum INTEGER NOT NULL
      ) STRICT;
    `);
    fillProofRows(db);
  },
};
