import Database from "better-sqlite3";
import type { Db } from "./db.ts";
import { migrate } from "./migrate.ts";
import { steps } from "./migrations/steps.ts";

/** An empty store without a place, its schema the newest: where projections are rebuilt to be compared. */
export function openScratch(): Db {
  const db = new Database(""); // a temporary file of SQLite's own, gone with the connection
  db.pragma("journal_mode = OFF");
  db.pragma("synchronous = OFF");
  migrate(db, steps, () => "");
  db.pragma("foreign_keys = OFF"); // the projections stand here without their ledger
  return db;
}
