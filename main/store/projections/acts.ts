import type { Body } from "../../../app/ledger/kinds.ts";
import type { Db } from "../db.ts";
import { checkRecord } from "./checkRow.ts";
import { refreshStatus } from "./moveStatus.ts";
import { readStatus } from "./SpindleStatus.ts";

/** Every stop filed before the release is lifted by it; one filed later stands anew. */
export function applyStopRelease(db: Db, body: Body<"stopRelease">, n: number): void {
  refreshStatus(db, body.spindleId, { releasedN: n });
}

/** The choice names a check; it counts as long as that check does. */
export function applyBaselineChoice(db: Db, body: Body<"baselineChoice">, n: number): void {
  const check = checkRecord(db, body.checkId);
  if (check === undefined || check.spindle_id !== body.spindleId) return; // names nothing of this spindle
  const { choices } = readStatus(db, body.spindleId);
  refreshStatus(db, body.spindleId, { choices: [...choices, [n, check.n]] });
}
