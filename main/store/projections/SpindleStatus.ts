import { type Db, prepared } from "../db.ts";
import { putRow } from "../sealedRow.ts";

/** Where a check stands in its spindle's history: instant in ms, place in this file. */
export type CheckAt = readonly [measuredAtMs: number, n: number];

/** A spindle's standing: what a list of all spindles needs, without looking at their checks. */
export type SpindleStatus = {
  /** Checks that count. */
  readonly checkCount: number;
  readonly last: CheckAt | null;
  readonly baseline: CheckAt | null;
  /** The first check with verdict `stop` since the last release. */
  readonly stop: CheckAt | null;
  /** Place of the last release; 0 without one. */
  readonly releasedN: number;
  /** Baseline choices, oldest first: place of the act, and the check. */
  readonly choices: readonly (readonly [actN: number, n: number])[];
  /** Up to `RECENT` last values, oldest first, newtons to a tenth: they are drawn small, and are written at every check. */
  readonly recent: readonly number[];
  /** How often each gauge and adapter served here, by id. */
  readonly uses: Readonly<Record<string, number>>;
};

export const RECENT = 24;

const nothing: SpindleStatus = {
  checkCount: 0,
  last: null,
  baseline: null,
  stop: null,
  releasedN: 0,
  choices: [],
  recent: [],
  uses: {},
};

const held = new WeakMap<Db, Map<string, SpindleStatus>>();

/** Long work on many checks in one transaction: each spindle's standing is written once, when the work is done. */
export function holdingStatus<T>(db: Db, work: () => T): T {
  const statuses = new Map<string, SpindleStatus>();
  held.set(db, statuses);
  try {
    const done = work();
    held.delete(db);
    for (const [id, status] of statuses) saveStatus(db, id, status);
    return done;
  } finally {
    held.delete(db);
  }
}

export function readStatus(db: Db, spindleId: string): SpindleStatus {
  const now = held.get(db)?.get(spindleId);
  if (now !== undefined) return now;
  const status = prepared<string>(db, "SELECT status FROM spindle_status WHERE spindle_id = ?").pluck().get(spindleId);
  return status === undefined ? nothing : parsed(status);
}

/** The standing of every spindle that has one, by id. */
export function allStatus(db: Db): Map<string, SpindleStatus> {
  const rows = prepared<[string, string]>(db, "SELECT spindle_id, status FROM spindle_status").raw().all();
  return new Map(rows.map(([id, status]) => [id, parsed(status)]));
}

export function saveStatus(db: Db, spindleId: string, status: SpindleStatus): void {
  const statuses = held.get(db);
  if (statuses !== undefined) {
    statuses.set(spindleId, status);
    return;
  }
  putRow(db, "spindle_status", { spindle_id: spindleId, status: JSON.stringify(status) });
}

const parsed = (status: string) => JSON.parse(status) as SpindleStatus; // `saveStatus` wrote it
