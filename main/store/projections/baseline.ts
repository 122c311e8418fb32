import { type Db, prepared } from "../db.ts";
import { localDate } from "../localDate.ts";
import type { CheckAt, SpindleStatus } from "./SpindleStatus.ts";

type Candidate = { n: number; measured_at_ms: number; offset_minutes: number; reason: string };
type NewBaseline = { n: number; at: string };

/**
 * The check a spindle is compared with, or undefined while there is none.
 * A choice by hand holds until a later service asks for a new baseline. After such a service it is the first check
 * measured after it; before any, the first check of all. Only checks that count and have a value can be one.
 */
export function baselineOf(db: Db, spindleId: string, choices: SpindleStatus["choices"]): CheckAt | undefined {
  const event = prepared<NewBaseline>(
    db,
    "SELECT n, at FROM service_event WHERE spindle_id = ? AND new_baseline = 1 ORDER BY at DESC, n DESC LIMIT 1",
  ).get(spindleId);
  const found = standingChoice(db, spindleId, choices, event) ?? firstCheck(db, spindleId, event);
  return found && [found.measured_at_ms, found.n];
}

/** The latest choice whose check still counts, unless the service came after it. */
function standingChoice(
  db: Db,
  spindleId: string,
  choices: SpindleStatus["choices"],
  event: NewBaseline | undefined,
): Candidate | undefined {
  const candidate = prepared<Candidate>(db, `${CANDIDATES} AND n = ?`);
  for (const [actN, n] of choices.toReversed()) {
    const check = candidate.get(spindleId, n);
    if (check === undefined) continue;
    return event === undefined || actN > event.n || isAfter(check, event) ? check : undefined;
  }
  return undefined;
}

function firstCheck(db: Db, spindleId: string, event: NewBaseline | undefined): Candidate | undefined {
  // A day's margin, since the event's date is a local one; `isAfter` decides.
  const fromMs = event === undefined ? Number.MIN_SAFE_INTEGER : Date.parse(event.at) - 86_400_000;
  const rows = prepared<Candidate>(db, `${CANDIDATES} AND measured_at_ms >= ? ORDER BY measured_at_ms, n`);
  for (const row of rows.iterate(spindleId, fromMs)) if (event === undefined || isAfter(row, event)) return row;
  return undefined;
}

const CANDIDATES = `SELECT n, measured_at_ms, offset_minutes, reason FROM check_row
  WHERE spindle_id = ? AND state = 'valid' AND value_n IS NOT NULL`;

/** On the service's own day its reason tells, else the order of filing. */
function isAfter(check: Candidate, event: NewBaseline): boolean {
  const day = localDate(check.measured_at_ms, check.offset_minutes);
  if (day !== event.at) return day > event.at;
  return check.reason === "afterService" || (check.n > event.n && check.reason !== "beforeService");
}
