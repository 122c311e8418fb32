import type { Check } from "../../../app/ledger/check.ts";
import type { Body } from "../../../app/ledger/kinds.ts";
import { type Db, prepared } from "../db.ts";
import { putRow, type SealedRow, sealedTables } from "../sealedRow.ts";
import { addToStatus, dropFromStatus } from "./spindleStatus.ts";

export type CheckRecord = SealedRow<"check_row">;

/** A check joins its spindle's history. */
export function applyCheck(db: Db, body: Check, n: number): void {
  const row = rowOf(body, n);
  putRow(db, "check_row", row, "new");
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
  return prepared<CheckRecord>(db, `SELECT ${sealedTables.check_row.join(", ")} FROM check_row WHERE check_id = ?`).get(
    checkId,
  );
}

function end(db: Db, checkId: string, state: "void" | "replaced", reason: string, n: number): void {
  const row = checkRecord(db, checkId);
  if (row === undefined || row.state !== "valid") return; // nothing there that still counts
  putRow(db, "check_row", { ...row, state, ended_by_n: n, ended_reason: reason });
  dropFromStatus(db, row);
}

function rowOf(body: Check, n: number): CheckRecord {
  return {
    n,
    check_id: body.checkId,
    spindle_id: body.spindleId,
    measured_at_ms: Date.parse(body.measuredAt),
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
