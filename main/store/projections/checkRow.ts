import type { Check } from "../../../app/ledger/check.ts";
import type { Body } from "../../../app/ledger/kinds.ts";
import { type Db, prepared } from "../db.ts";
import { putRow, sealedTables } from "../sealedRow.ts";
import { applyTerms } from "./checkTerms.ts";
import { addToStatus, dropFromStatus } from "./moveStatus.ts";

/** A row of `check_row`. The words in it come from the check's own schema. */
export type CheckRecord = {
  readonly n: number;
  readonly check_id: string;
  readonly spindle_id: string;
  readonly measured_at_ms: number;
  readonly offset_minutes: number;
  readonly value_n: number | null;
  readonly standard_n: number | null;
  readonly expanded_n: number | null;
  readonly verdict: Check["verdict"];
  readonly basis: Check["series"]["basis"];
  readonly cycle_count: number;
  readonly drop_from_baseline: number | null;
  readonly drop_from_previous: number | null;
  readonly gauge_id: string | null;
  readonly adapter_id: string | null;
  readonly operator_id: string | null;
  readonly reason: Check["reason"];
  readonly source: Check["source"];
  readonly state: "valid" | "void" | "replaced";
  readonly ended_by_n: number | null;
  readonly ended_reason: string | null;
  readonly remeasure_n: number | null;
};

const BY_ID = `SELECT ${sealedTables.check_row.join(", ")} FROM check_row WHERE check_id = ?`;

/** A check joins its spindle's history. */
export function applyCheck(db: Db, body: Check, n: number): void {
  const row = rowOf(body, n);
  putRow(db, "check_row", row, "new");
  applyTerms(db, body, n);
  addToStatus(db, row);
}

/** The check stays readable, with its reason; it counts no more. */
export function applyVoid(db: Db, body: Body<"void">, n: number): void {
  end(db, body.checkId, "void", body.reason, n);
}

/** The old check counts no more, the new one stands in this entry. */
export function applyReplacement(db: Db, body: Body<"replacement">, n: number): void {
  end(db, body.checkId, "replaced", body.reason, n);
  applyCheck(db, body.by, n);
}

export function applyRemeasureMark(db: Db, body: Body<"remeasureMark">, n: number): void {
  for (const checkId of body.checkIds) {
    const row = checkRecord(db, checkId);
    if (row !== undefined) putRow(db, "check_row", { ...row, remeasure_n: n });
  }
}

/** The projection's own row of a check, in whatever state. */
export function checkRecord(db: Db, checkId: string): CheckRecord | undefined {
  return prepared<CheckRecord>(db, BY_ID).get(checkId);
}

function end(db: Db, checkId: string, state: "void" | "replaced", reason: string, n: number): void {
  const row = checkRecord(db, checkId);
  if (row === undefined || row.state !== "valid") return; // nothing there that still counts
  putRow(db, "check_row", { ...row, state, ended_by_n: n, ended_reason: reason });
  dropFromStatus(db, row);
}

function rowOf(body: Check, n: number): CheckRecord {
  return {
    spindle_id: body.spindleId,
    measured_at_ms: Date.parse(body.measuredAt),
    n,
    check_id: body.checkId,
    offset_minutes: body.offsetMinutes,
    value_n: body.valueN,
    standard_n: body.budget?.standardN ?? null,
    expanded_n: body.budget?.expandedN ?? null,
    verdict: body.verdict,
    basis: body.series.basis,
    cycle_count: body.series.n,
    drop_from_baseline: body.dropFromBaseline,
    drop_from_previous: body.dropFromPrevious,
    gauge_id: body.gaugeId,
    adapter_id: body.adapterId,
    operator_id: body.operatorId,
    reason: body.reason,
    source: body.source,
    state: "valid",
    ended_by_n: null,
    ended_reason: null,
    remeasure_n: null,
  };
}
