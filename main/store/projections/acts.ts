import type { Body } from "../../../app/ledger/kinds.ts";
import { type Db, prepared } from "../db.ts";
import { readStatus, refreshStatus } from "./spindleStatus.ts";

/** Every stop filed before the release is lifted by it; one filed later stands anew. */
export function applyStopRelease(db: Db, body: Body<"stopRelease">, n: number): void {
  refreshStatus(db, body.spindleId, { released_n: n });
}

/** The choice names a check; it counts as long as that check does. */
export function applyBaselineChoice(db: Db, body: Body<"baselineChoice">, n: number): void {
  const check = prepared<{ n: number; spindle_id: string }>(
    db,
    "SELECT n, spindle_id FROM check_row WHERE check_id = ?",
  ).get(body.checkId);
  if (check === undefined || check.spindle_id !== body.spindleId) return; // names nothing of this spindle
  refreshStatus(db, body.spindleId, { choices: [...readStatus(db, body.spindleId).choices, [n, check.n]] });
}
