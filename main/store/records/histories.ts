import type { CheckReason } from "../../../app/ledger/check.ts";
import type { Verdict } from "../../../app/verdict/Judgement.ts";
import { type Db, prepared } from "../db.ts";

/** A point of a spindle's history: a check that counts and has a value. */
export type HistoryRow = {
  readonly checkId: string;
  readonly spindleId: string;
  readonly measuredAtMs: number;
  readonly valueN: number;
  readonly standardUncertaintyN: number | undefined;
  readonly verdict: Verdict;
  readonly reason: CheckReason;
  readonly gaugeId: string | undefined;
  readonly adapterId: string | undefined;
};

const columns = `check_id, spindle_id, measured_at_ms, value_n, standard_n, verdict, reason, gauge_id, adapter_id`;
const counting = "state = 'valid' AND value_n IS NOT NULL";

/** One spindle's history, oldest first. */
export function historyRows(db: Db, spindleId: string): HistoryRow[] {
  return prepared<Row>(
    db,
    `SELECT ${columns} FROM check_row WHERE spindle_id = ? AND ${counting} ORDER BY measured_at_ms, n`,
  )
    .all(spindleId)
    .map(toHistory);
}

/** Every spindle's history in one pass, spindle by spindle, each oldest first. For jobs: it reads all checks. */
export function* allHistoryRows(db: Db): Generator<HistoryRow> {
  const rows = db.prepare<[], Row>(
    `SELECT ${columns} FROM check_row WHERE ${counting} ORDER BY spindle_id, measured_at_ms, n`,
  );
  for (const row of rows.iterate()) yield toHistory(row);
}

type Row = {
  check_id: string;
  spindle_id: string;
  measured_at_ms: number;
  value_n: number;
  standard_n: number | null;
  verdict: Verdict;
  reason: CheckReason;
  gauge_id: string | null;
  adapter_id: string | null;
};

function toHistory(row: Row): HistoryRow {
  return {
    checkId: row.check_id,
    spindleId: row.spindle_id,
    measuredAtMs: row.measured_at_ms,
    valueN: row.value_n,
    standardUncertaintyN: row.standard_n ?? undefined,
    verdict: row.verdict,
    reason: row.reason,
    gaugeId: row.gauge_id ?? undefined,
    adapterId: row.adapter_id ?? undefined,
  };
}
