import { crc32 } from "node:zlib";
import { type Db, prepared } from "./db.ts";

export type SqlValue = string | number | null;

/** Tables outside the chain whose rows carry a checksum, with the columns it covers, key first. */
export const sealedTables = {
  origin: ["n", "origin", "machine", "created_ms"],
  run: ["n", "origin_n", "first_seq"],
  register: ["kind", "id", "n", "body"],
  check_row: [
    "n",
    "check_id",
    "spindle_id",
    "measured_at_ms",
    "offset_minutes",
    "value_n",
    "standard_n",
    "expanded_n",
    "verdict",
    "basis",
    "cycle_count",
    "drop_from_baseline",
    "drop_from_previous",
    "gauge_id",
    "adapter_id",
    "operator_id",
    "reason",
    "source",
    "state",
    "ended_by_n",
    "ended_reason",
    "remeasure_n",
  ],
  check_terms: ["n", "terms"],
  service_event: ["event_id", "spindle_id", "at", "n", "new_baseline", "body"],
  spindle_status: ["spindle_id", "status"],
  person: ["operator_id", "name", "initials", "pin"],
  proof_row: ["proof_id", "gauge_id", "adapter_id", "proved_on", "n"],
  proof_draft: ["id", "body", "saved_at_ms"],
  draft: ["id", "body", "spool_position", "saved_at_ms"],
} as const;

export type SealedTable = keyof typeof sealedTables;
export type SealedRow<T extends SealedTable> = { readonly [C in (typeof sealedTables)[T][number]]: SqlValue };

/** CRC-32 over the columns as JSON: finds every single flipped bit. It is no proof against intent; the chain is. */
export const rowSum = (values: readonly unknown[]): number => crc32(JSON.stringify(values));

/** Writes a row with its checksum; `new` refuses a key that is there, `over` replaces it. */
export function putRow<T extends SealedTable>(db: Db, table: T, row: SealedRow<T>, how: "new" | "over" = "over"): void {
  const columns: readonly string[] = sealedTables[table];
  const values = columns.map((column) => (row as Record<string, SqlValue>)[column]); // keyed by the table's own columns
  prepared(db, insertSql(table, columns, how)).run(...values, rowSum(values));
}

const sqlTexts = new Map<string, string>();

function insertSql(table: string, columns: readonly string[], how: "new" | "over"): string {
  const key = `${how} ${table}`;
  let sql = sqlTexts.get(key);
  if (sql === undefined) {
    const verb = how === "new" ? "INSERT" : "INSERT OR REPLACE";
    sql = `${verb} INTO ${table} (${columns.join(", ")}, sum) VALUES (${columns.map(() => "?").join(", ")}, ?)`;
    sqlTexts.set(key, sql);
  }
  return sql;
}
