import type { Db } from "./db.ts";

type Item = { type: string; name: string; sql: string | null };

/** Every table and index a file has, as SQLite keeps their definitions. */
export function schemaOf(db: Db): Item[] {
  return db
    .prepare<[], Item>(
      "SELECT type, name, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite_stat%' ORDER BY type, name",
    )
    .all();
}

/** The tables the ledger cannot do without. */
const needed = ["check_row", "draft", "entry", "origin", "person", "register", "service_event", "spindle_status"];

/** What is missing of the file's tables, in words, or undefined. */
export function schemaDamage(db: Db): string | undefined {
  const there = new Set(schemaOf(db).map((item) => item.name));
  const missing = needed.find((name) => !there.has(name));
  return missing === undefined ? undefined : `its table ${missing} is gone`;
}
