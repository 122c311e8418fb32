import { type Db, prepared } from "../db.ts";
import { putRow } from "../sealedRow.ts";
import { baselineOf } from "./baseline.ts";
import type { CheckRecord } from "./checkRow.ts";

/** A spindle's standing, in places of this file (`check_row.n`). What a list of all spindles needs, without their checks. */
export type SpindleStatus = {
  readonly spindle_id: string;
  /** Checks that count. */
  readonly check_count: number;
  readonly last_n: number | null;
  readonly baseline_n: number | null;
  /** The first check with verdict `stop` since the last release. */
  readonly stop_n: number | null;
  readonly released_n: number;
  /** Baseline choices, oldest first: place of the act, place of the check. */
  readonly choices: readonly (readonly [number, number])[];
  /** Up to `RECENT` last values, oldest first: instant in ms, newtons. */
  readonly recent: readonly (readonly [number, number])[];
  /** How often each gauge and adapter served here, by id. */
  readonly uses: Readonly<Record<string, number>>;
};

export const RECENT = 24;

export function readStatus(db: Db, spindleId: string): SpindleStatus {
  const row = prepared<StatusRow>(db, "SELECT * FROM spindle_status WHERE spindle_id = ?").get(spindleId);
  return row === undefined ? { ...nothing, spindle_id: spindleId } : toStatus(row);
}

/** All spindles that have a standing. */
export function allStatus(db: Db): SpindleStatus[] {
  return prepared<StatusRow>(db, "SELECT * FROM spindle_status").all().map(toStatus);
}

/** A check was filed. Nearly always it is the newest: then the standing moves on without a look back. */
export function addToStatus(db: Db, check: CheckRecord): void {
  const id = String(check.spindle_id);
  const old = readStatus(db, id);
  const counted = { ...old, check_count: old.check_count + 1, uses: count(old.uses, check, 1) };
  if (old.baseline_n === null || !isNewest(db, old, check)) {
    refresh(db, counted);
    return;
  }
  const stops = check.verdict === "stop" && old.stop_n === null;
  const { measured_at_ms: at, value_n: value } = check;
  save(db, {
    ...counted,
    last_n: Number(check.n),
    stop_n: stops ? Number(check.n) : old.stop_n,
    recent: value === null ? old.recent : [...old.recent, [Number(at), Number(value)] as const].slice(-RECENT),
  });
}

/** A check was voided or replaced: everything falls back to what the others say. */
export function dropFromStatus(db: Db, check: CheckRecord): void {
  const old = readStatus(db, String(check.spindle_id));
  refresh(db, { ...old, check_count: old.check_count - 1, uses: count(old.uses, check, -1) });
}

/** Finds last check, baseline, stop and recent values anew; counts stand, and what `change` says. */
export function refreshStatus(db: Db, spindleId: string, change: Partial<SpindleStatus> = {}): void {
  refresh(db, { ...readStatus(db, spindleId), ...change });
}

function refresh(db: Db, status: SpindleStatus): void {
  const id = status.spindle_id;
  const recent = prepared<{ at: number; value: number }>(db, RECENT_SQL).all(id, RECENT);
  save(db, {
    ...status,
    last_n: prepared<number>(db, LAST_SQL).pluck().get(id) ?? null,
    baseline_n: baselineOf(db, id, status.choices) ?? null,
    stop_n: prepared<number>(db, STOP_SQL).pluck().get(id, status.released_n) ?? null,
    recent: recent.reverse().map((r) => [r.at, r.value] as const),
  });
}

const LAST_SQL =
  "SELECT n FROM check_row WHERE spindle_id = ? AND state = 'valid' ORDER BY measured_at_ms DESC, n DESC LIMIT 1";
const STOP_SQL = `SELECT n FROM check_row INDEXED BY check_stopping
  WHERE spindle_id = ? AND n > ? AND verdict = 'stop' AND state = 'valid' ORDER BY n LIMIT 1`;
const RECENT_SQL = `SELECT measured_at_ms AS at, value_n AS value FROM check_row
  WHERE spindle_id = ? AND state = 'valid' AND value_n IS NOT NULL ORDER BY measured_at_ms DESC, n DESC LIMIT ?`;

function isNewest(db: Db, status: SpindleStatus, check: CheckRecord): boolean {
  if (status.last_n === null) return true;
  const last = prepared<number>(db, "SELECT measured_at_ms FROM check_row WHERE n = ?").pluck().get(status.last_n);
  return last !== undefined && last <= Number(check.measured_at_ms);
}

function count(uses: SpindleStatus["uses"], check: CheckRecord, by: 1 | -1): SpindleStatus["uses"] {
  const next = { ...uses };
  for (const id of [check.gauge_id, check.adapter_id]) {
    if (typeof id !== "string") continue;
    next[id] = (next[id] ?? 0) + by;
    if (next[id] === 0) delete next[id];
  }
  return Object.fromEntries(Object.entries(next).sort(([a], [b]) => (a < b ? -1 : 1))); // one form, however it came about
}

const nothing: Omit<SpindleStatus, "spindle_id"> = {
  check_count: 0,
  last_n: null,
  baseline_n: null,
  stop_n: null,
  released_n: 0,
  choices: [],
  recent: [],
  uses: {},
};

type StatusRow = Omit<SpindleStatus, "choices" | "recent" | "uses"> & { choices: string; recent: string; uses: string };

function toStatus({ choices, recent, uses, ...row }: StatusRow): SpindleStatus {
  return { ...row, choices: JSON.parse(choices), recent: JSON.parse(recent), uses: JSON.parse(uses) };
}

function save(db: Db, { choices, recent, uses, ...row }: SpindleStatus): void {
  putRow(db, "spindle_status", {
    ...row,
    choices: JSON.stringify(choices),
    recent: JSON.stringify(recent),
    uses: JSON.stringify(uses),
  });
}
