import type { CheckReason } from "../../../app/ledger/check.ts";
import type { CheckPoint, CoursePoint } from "../../../app/trend/History.ts";
import type { Verdict } from "../../../app/verdict/Judgement.ts";
import { type Db, prepared } from "../db.ts";

const columns = "check_id, measured_at_ms, value_n, standard_n, verdict, reason, gauge_id, adapter_id";
const counting = "state = 'valid' AND value_n IS NOT NULL";

/** One spindle's checks that count and have a value, oldest first. */
export function historyPoints(db: Db, spindleId: string): CheckPoint[] {
  return prepared<Row>(
    db,
    `SELECT ${columns} FROM check_row WHERE spindle_id = ? AND ${counting} ORDER BY measured_at_ms, n`,
  )
    .raw()
    .all(spindleId)
    .map(toPoint);
}

/** So many rows are taken out of the file at once: a call for each costs more than the row, all at once too much memory. */
const AT_ONCE = 10_000;

/**
 * Every spindle's, each oldest first, in one pass, as far as its course is read from them. For jobs: it reads all checks,
 * in the order in which the file holds them, since going by an index would visit each page of the file many times; and
 * of each only what a course needs, since texts are most of the price.
 * @param atOnce  rows read at once; called inside a transaction, all of them are of one moment
 */
export function allHistoryPoints(db: Db, atOnce = AT_ONCE): Map<string, CoursePoint[]> {
  const slice = prepared<CourseRow>(
    db,
    `SELECT n, spindle_id, measured_at_ms, value_n, standard_n, gauge_id, adapter_id, nullif(reason, 'routine')
     FROM check_row WHERE n > ? AND ${counting} ORDER BY n LIMIT ?`,
  ).raw();
  const histories = new Map<string, CoursePoint[]>();
  const unsorted = new Set<CoursePoint[]>();
  const one = onceEach();
  for (let after = 0, full = true; full; ) {
    const rows = slice.all(after, atOnce);
    for (const [, spindleId, atMs, valueN, standardN, gaugeId, adapterId, reason] of rows) {
      const point: CoursePoint = {
        atMs,
        valueN,
        standardUncertaintyN: standardN ?? undefined,
        gaugeId: one(gaugeId),
        adapterId: one(adapterId),
        reason: one(reason),
      };
      const own = histories.get(spindleId);
      if (own === undefined) histories.set(spindleId, [point]);
      else {
        if (atMs < own.at(-1)!.atMs) unsorted.add(own);
        own.push(point);
      }
    }
    const end = rows.at(-1)?.[0] ?? after;
    full = rows.length === atOnce && end > after; // in a damaged file the rows may not rise
    after = end;
  }
  for (const own of unsorted) own.sort((a, b) => a.atMs - b.atMs); // stable: of one instant the earlier filed stays first
  return histories;
}

/** Holds each text once, however many rows bring it: a works has few gauges and many checks. */
function onceEach(): (text: string | null) => string | undefined {
  const texts = new Map<string, string>();
  return (text) => {
    if (text === null) return undefined;
    const held = texts.get(text);
    if (held === undefined) texts.set(text, text);
    return held ?? text;
  };
}

type CourseRow = [
  n: number,
  spindleId: string,
  atMs: number,
  valueN: number,
  standardN: number | null,
  gaugeId: string | null,
  adapterId: string | null,
  reason: CheckReason | null,
];

/** In the order of `columns`. */
type Row = [
  checkId: string,
  atMs: number,
  valueN: number,
  standardN: number | null,
  verdict: Verdict,
  reason: CheckReason,
  gaugeId: string | null,
  adapterId: string | null,
];

function toPoint([checkId, atMs, valueN, standardN, verdict, reason, gaugeId, adapterId]: Row): CheckPoint {
  return {
    checkId,
    atMs,
    valueN,
    standardUncertaintyN: standardN ?? undefined,
    verdict,
    reason,
    gaugeId: gaugeId ?? undefined,
    adapterId: adapterId ?? undefined,
  };
}
