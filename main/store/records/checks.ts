import type { Check } from "../../../app/ledger/check.ts";
import { type Db, prepared } from "../db.ts";
import { readEntry } from "../ledger/readEntry.ts";
import { type CheckSummary, type SummaryRow, summaryColumns, summarySource, toSummary } from "./checkSummary.ts";

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
  const rows = prepared<SummaryRow>(
    db,
    `SELECT ${summaryColumns} FROM ${summarySource}
     WHERE c.spindle_id = ? AND (c.measured_at_ms, c.n) < (?, ?)
     ORDER BY c.measured_at_ms DESC, c.n DESC LIMIT ?`,
  ).all(spindleId, after?.measuredAtMs ?? Number.MAX_SAFE_INTEGER, after?.place ?? 0, limit);
  return rows.map(toSummary);
}

/** One check as lists show it. */
export function checkSummary(db: Db, checkId: string): CheckSummary | undefined {
  const row = prepared<SummaryRow>(db, `SELECT ${summaryColumns} FROM ${summarySource} WHERE c.check_id = ?`).get(
    checkId,
  );
  return row && toSummary(row);
}

/** The same by place in this file. */
export function checkSummaryAt(db: Db, place: number): CheckSummary | undefined {
  const row = prepared<SummaryRow>(db, `SELECT ${summaryColumns} FROM ${summarySource} WHERE c.n = ?`).get(place);
  return row && toSummary(row);
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

/** The last check of a spindle that counts, by time of measuring: what a new one is compared with. */
export function lastCheck(db: Db, spindleId: string): CheckSummary | undefined {
  const place = prepared<number | null>(db, "SELECT last_n FROM spindle_status WHERE spindle_id = ?")
    .pluck()
    .get(spindleId);
  return place == null ? undefined : checkSummaryAt(db, place);
}
