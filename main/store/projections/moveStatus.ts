import { type Db, prepared } from "../db.ts";
import { baselineOf } from "./baseline.ts";
import type { CheckRecord } from "./checkRow.ts";
import { type CheckAt, RECENT, readStatus, type SpindleStatus, saveStatus } from "./SpindleStatus.ts";

/** A check was filed. Nearly always it is the newest: then the standing moves on without a look back. */
export function addToStatus(db: Db, check: CheckRecord): void {
  const { spindle_id: id, measured_at_ms: atMs, n, value_n: valueN } = check;
  const old = readStatus(db, id);
  const counted = { ...old, checkCount: old.checkCount + 1, uses: count(old.uses, check, 1) };
  const older = old.baseline === null || (old.last !== null && old.last[0] > atMs);
  // An old check may settle an old stop, or be one that was settled long ago.
  if (older || (check.source === "imported" && (old.stop !== null || check.verdict === "stop"))) {
    refresh(db, id, counted);
    return;
  }
  const here: CheckAt = [atMs, n];
  const recent = valueN === null ? old.recent : [...old.recent, tenth(valueN)].slice(-RECENT);
  const stop = old.stop ?? (check.verdict === "stop" ? here : null);
  saveStatus(db, id, { ...counted, last: here, stop, recent });
}

/** A check was voided or replaced: everything falls back to what the others say. */
export function dropFromStatus(db: Db, check: CheckRecord): void {
  const old = readStatus(db, check.spindle_id);
  refresh(db, check.spindle_id, { ...old, checkCount: old.checkCount - 1, uses: count(old.uses, check, -1) });
}

/** Finds last check, baseline, stop and recent values anew; counts stand, and what `change` says. */
export function refreshStatus(db: Db, spindleId: string, change: Partial<SpindleStatus> = {}): void {
  refresh(db, spindleId, { ...readStatus(db, spindleId), ...change });
}

function refresh(db: Db, id: string, status: SpindleStatus): void {
  const recent = prepared<number>(db, RECENT_SQL).pluck().all(id, RECENT);
  saveStatus(db, id, {
    ...status,
    last: prepared<CheckAt>(db, LAST_SQL).raw().get(id) ?? null,
    baseline: baselineOf(db, id, status.choices) ?? null,
    stop: prepared<CheckAt>(db, STOP_SQL).raw().get(id, status.releasedN) ?? null,
    recent: recent.reverse().map(tenth),
  });
}

const LAST_SQL = `SELECT measured_at_ms, n FROM check_row
  WHERE spindle_id = ? AND state = 'valid' ORDER BY measured_at_ms DESC, n DESC LIMIT 1`;
/**
 * The first stop since the last release. One out of an old spreadsheet that the spreadsheets themselves go past is history:
 * the spindle was put right then. So is one older than what was measured here before it was imported. What is measured
 * afterwards does not lift it; a release does.
 */
const STOP_SQL = `SELECT measured_at_ms, n FROM check_row AS stop INDEXED BY check_stopping
  WHERE spindle_id = ? AND n > ? AND verdict = 'stop' AND state = 'valid' AND NOT (source = 'imported' AND EXISTS (
    SELECT 1 FROM check_row AS later INDEXED BY check_by_spindle
    WHERE later.spindle_id = stop.spindle_id AND later.measured_at_ms > stop.measured_at_ms
      AND (later.source = 'imported' OR later.n < stop.n) AND later.verdict <> 'stop' AND later.state = 'valid'))
  ORDER BY n LIMIT 1`;
const tenth = (valueN: number) => Math.round(valueN * 10) / 10;

const RECENT_SQL = `SELECT value_n FROM check_row
  WHERE spindle_id = ? AND state = 'valid' AND value_n IS NOT NULL ORDER BY measured_at_ms DESC, n DESC LIMIT ?`;

function count(uses: SpindleStatus["uses"], check: CheckRecord, by: 1 | -1): SpindleStatus["uses"] {
  const next = { ...uses };
  let strange = false;
  for (const id of [check.gauge_id, check.adapter_id]) {
    if (id === null) continue;
    strange ||= next[id] === undefined;
    next[id] = (next[id] ?? 0) + by;
    if (next[id] === 0) delete next[id];
  }
  // One form, however it came about.
  return strange ? Object.fromEntries(Object.entries(next).sort(([a], [b]) => (a < b ? -1 : 1))) : next;
}
