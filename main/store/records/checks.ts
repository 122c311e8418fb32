import type { Check } from "../../../app/ledger/check.ts";
import { type Db, prepared } from "../db.ts";
import { readEntry } from "../ledger/readEntry.ts";
import { type CheckRecord, checkRecord } from "../projections/checkRow.ts";
import { type CheckAt, readStatus } from "../projections/SpindleStatus.ts";
import { type CheckSummary, toSummary } from "./checkSummary.ts";

/** Where a page of checks goes on: the last one of the page before. */
export type PageMark = Pick<CheckSummary, "measuredAtMs" | "place">;

/** A check with everything that led to its verdict, and where it stands in the ledger. */
export type FiledCheck = {
  readonly check: Check;
  readonly summary: CheckSummary;
  readonly origin: string;
  readonly seq: number;
  readonly hash: string;
  /** When it was filed, UTC ISO 8601. */
  readonly filedAt: string;
};

/** A spindle's checks, newest first, voided ones among them, one page at a time. */
export function checkPage(db: Db, spindleId: string, limit: number, after?: PageMark): CheckSummary[] {
  const { baseline } = readStatus(db, spindleId);
  const rows = prepared<CheckRecord>(
    db,
    `SELECT * FROM check_row WHERE spindle_id = ? AND (measured_at_ms, n) < (?, ?)
     ORDER BY measured_at_ms DESC, n DESC LIMIT ?`,
  ).all(spindleId, after?.measuredAtMs ?? Number.MAX_SAFE_INTEGER, after?.place ?? 0, limit);
  return rows.map((row) => toSummary(row, baseline));
}

/** One check as lists show it. */
export function checkSummary(db: Db, checkId: string): CheckSummary | undefined {
  const row = checkRecord(db, checkId);
  return row && toSummary(row, readStatus(db, row.spindle_id).baseline);
}

/** The check that a spindle's status points at. */
export function checkSummaryAt(db: Db, [, n]: CheckAt, baseline: CheckAt | null): CheckSummary | undefined {
  const row = prepared<CheckRecord>(db, "SELECT * FROM check_row WHERE n = ?").get(n);
  return row && toSummary(row, baseline);
}

/** The whole check as it was filed. */
export function readCheck(db: Db, checkId: string): FiledCheck | undefined {
  const summary = checkSummary(db, checkId);
  const entry = summary && readEntry(db, summary.place);
  if (summary === undefined || entry === undefined) return undefined;
  // The projection points at the entry the check came in: its own, or the replacement that brought it.
  const body = entry.kind === "replacement" ? (entry.body as { by: Check }).by : (entry.body as Check);
  return { check: body, summary, origin: entry.origin, seq: entry.seq, hash: entry.hash, filedAt: entry.at };
}
