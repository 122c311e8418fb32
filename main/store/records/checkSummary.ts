import type { Check, CheckReason } from "../../../app/ledger/check.ts";
import type { Verdict } from "../../../app/verdict/Judgement.ts";

/** A check as lists show it. */
export type CheckSummary = {
  readonly checkId: string;
  readonly spindleId: string;
  readonly measuredAtMs: number;
  readonly offsetMinutes: number;
  readonly valueN: number | undefined;
  readonly standardUncertaintyN: number | undefined;
  readonly expandedN: number | undefined;
  readonly verdict: Verdict;
  readonly basis: "settled" | "peak" | "typed";
  /** Cycles that counted. */
  readonly n: number;
  readonly dropFromBaseline: number | undefined;
  readonly dropFromPrevious: number | undefined;
  readonly gaugeId: string | undefined;
  readonly adapterId: string | undefined;
  readonly operatorId: string | undefined;
  readonly reason: CheckReason;
  readonly source: Check["source"];
  readonly isBaseline: boolean;
  /** Why the check no longer counts, and how it came so. */
  readonly voided: { readonly reason: string; readonly how: "void" | "replaced" } | undefined;
  /** Marked to be measured again. */
  readonly remeasure: boolean;
  /** Place of its entry in this file. */
  readonly place: number;
};

/** Columns of `check_row` and whether it is its spindle's baseline, for a SELECT that joins both as `c` and `s`. */
export const summaryColumns = `c.*, c.n = s.baseline_n AS is_baseline`;
export const summarySource = "check_row c JOIN spindle_status s ON s.spindle_id = c.spindle_id";

/** A row of that SELECT. The words in it were written from the check's own schema. */
export type SummaryRow = {
  n: number;
  check_id: string;
  spindle_id: string;
  measured_at_ms: number;
  offset_minutes: number;
  value_n: number | null;
  standard_n: number | null;
  expanded_n: number | null;
  verdict: Verdict;
  basis: CheckSummary["basis"];
  cycle_count: number;
  drop_from_baseline: number | null;
  drop_from_previous: number | null;
  gauge_id: string | null;
  adapter_id: string | null;
  operator_id: string | null;
  reason: CheckReason;
  source: Check["source"];
  state: "valid" | "void" | "replaced";
  ended_reason: string | null;
  remeasure_n: number | null;
  is_baseline: 0 | 1 | null;
};

export function toSummary(row: SummaryRow): CheckSummary {
  return {
    checkId: row.check_id,
    spindleId: row.spindle_id,
    measuredAtMs: row.measured_at_ms,
    offsetMinutes: row.offset_minutes,
    valueN: row.value_n ?? undefined,
    standardUncertaintyN: row.standard_n ?? undefined,
    expandedN: row.expanded_n ?? undefined,
    verdict: row.verdict,
    basis: row.basis,
    n: row.cycle_count,
    dropFromBaseline: row.drop_from_baseline ?? undefined,
    dropFromPrevious: row.drop_from_previous ?? undefined,
    gaugeId: row.gauge_id ?? undefined,
    adapterId: row.adapter_id ?? undefined,
    operatorId: row.operator_id ?? undefined,
    reason: row.reason,
    source: row.source,
    isBaseline: row.is_baseline === 1,
    voided: row.state === "valid" ? undefined : { reason: row.ended_reason ?? "", how: row.state },
    remeasure: row.remeasure_n !== null,
    place: row.n,
  };
}
