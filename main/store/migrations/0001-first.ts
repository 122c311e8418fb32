import type { Migration } from "../migrate.ts";

/**
 * The ledger (`origin`, `run`, `entry`), its waveforms and signed heads, the projections that screens read, and the
 * unchained tables (`person`, `draft`). Rows outside the chain carry `sum`, a checksum over their own columns, so a
 * flipped bit is found there too.
 *
 * `entry.n` is run x 2^32 + seq: a run is a stretch of one origin's entries as they came to this file, so `n` rises in
 * order of arrival, tells origin and seq, and needs no index beside it. `waveform.n` and `check_row.n` are the entry's: few
 * trees are touched by an accept, and most only at their end, since each page written is part of its price.
 */
export const first: Migration = {
  version: 1,
  up(db) {
    db.exec(`
      CREATE TABLE origin (
        n INTEGER PRIMARY KEY,
        origin TEXT NOT NULL UNIQUE,
        machine TEXT,
        created_ms INTEGER NOT NULL,
        sum INTEGER NOT NULL
      ) STRICT;

      CREATE TABLE run (
        n INTEGER PRIMARY KEY,
        origin_n INTEGER NOT NULL REFERENCES origin (n),
        first_seq INTEGER NOT NULL,
        sum INTEGER NOT NULL
      ) STRICT;

      CREATE TABLE entry (
        n INTEGER PRIMARY KEY,
        kind TEXT NOT NULL,
        hash BLOB NOT NULL,
        length INTEGER NOT NULL,
        codec INTEGER NOT NULL,
        packed BLOB NOT NULL
      ) STRICT;
      CREATE INDEX entry_by_kind ON entry (kind, n) WHERE kind <> 'check';

      CREATE TABLE waveform (
        n INTEGER PRIMARY KEY,
        cycles TEXT NOT NULL,
        bytes BLOB NOT NULL
      ) STRICT;

      CREATE TABLE signed_head (
        n INTEGER PRIMARY KEY,
        origin_n INTEGER NOT NULL REFERENCES origin (n),
        seq INTEGER NOT NULL,
        hash TEXT NOT NULL,
        at TEXT NOT NULL,
        public_key TEXT NOT NULL,
        signature TEXT NOT NULL
      ) STRICT;

      CREATE TABLE register (
        kind TEXT NOT NULL,
        id TEXT NOT NULL,
        n INTEGER NOT NULL,
        body TEXT NOT NULL,
        sum INTEGER NOT NULL,
        PRIMARY KEY (kind, id)
      ) STRICT, WITHOUT ROWID;

      CREATE TABLE check_row (
        n INTEGER PRIMARY KEY,
        check_id TEXT NOT NULL UNIQUE,
        spindle_id TEXT NOT NULL,
        measured_at_ms INTEGER NOT NULL,
        offset_minutes INTEGER NOT NULL,
        value_n REAL,
        standard_n REAL,
        expanded_n REAL,
        verdict TEXT NOT NULL,
        basis TEXT NOT NULL,
        cycle_count INTEGER NOT NULL,
        drop_from_baseline REAL,
        drop_from_previous REAL,
        gauge_id TEXT,
        adapter_id TEXT,
        operator_id TEXT,
        reason TEXT NOT NULL,
        source TEXT NOT NULL,
        state TEXT NOT NULL,
        ended_by_n INTEGER,
        ended_reason TEXT,
        remeasure_n INTEGER,
        sum INTEGER NOT NULL
      ) STRICT;
      CREATE INDEX check_by_spindle ON check_row (spindle_id, measured_at_ms, n);
      CREATE INDEX check_stopping ON check_row (spindle_id, n) WHERE verdict = 'stop';

      CREATE TABLE service_event (
        event_id TEXT PRIMARY KEY,
        spindle_id TEXT NOT NULL,
        at TEXT NOT NULL,
        n INTEGER NOT NULL,
        new_baseline INTEGER NOT NULL,
        body TEXT NOT NULL,
        sum INTEGER NOT NULL
      ) STRICT, WITHOUT ROWID;
      CREATE INDEX service_event_by_spindle ON service_event (spindle_id, at, n);

      CREATE TABLE spindle_status (
        spindle_id TEXT PRIMARY KEY,
        status TEXT NOT NULL,
        sum INTEGER NOT NULL
      ) STRICT, WITHOUT ROWID;

      CREATE TABLE person (
        operator_id TEXT PRIMARY KEY,
        name TEXT NOT NULL,
        initials TEXT NOT NULL,
        pin TEXT,
        sum INTEGER NOT NULL
      ) STRICT, WITHOUT ROWID;

      CREATE TABLE draft (
        id INTEGER PRIMARY KEY CHECK (id = 1),
        body TEXT NOT NULL,
        spool_position INTEGER NOT NULL,
        saved_at_ms INTEGER NOT NULL,
        sum INTEGER NOT NULL
      ) STRICT;
    `);
  },
};
