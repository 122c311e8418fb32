import { canonicalJson } from "../../../app/ledger/canonicalJson.ts";
import type { ServiceEvent } from "../../../app/ledger/register.ts";
import { type Db, prepared } from "../db.ts";
import { putRow } from "../sealedRow.ts";
import { refreshStatus } from "./moveStatus.ts";

/** A later entry with the same id replaces the earlier one, but keeps its place in the order of filing. */
export function applyServiceEvent(db: Db, body: ServiceEvent, n: number): void {
  const before = prepared<{ n: number; spindle_id: string }>(
    db,
    "SELECT n, spindle_id FROM service_event WHERE event_id = ?",
  ).get(body.eventId);
  putRow(db, "service_event", {
    event_id: body.eventId,
    spindle_id: body.spindleId,
    at: body.at,
    n: before?.n ?? n,
    new_baseline: body.newBaseline ? 1 : 0,
    body: canonicalJson(body),
  });
  refreshStatus(db, body.spindleId);
  if (before !== undefined && before.spindle_id !== body.spindleId) refreshStatus(db, before.spindle_id);
}
