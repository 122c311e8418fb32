import type { Check, CheckReason } from "../../../app/ledger/check.ts";
import type { Verdict } from "../../../app/verdict/Judgement.ts";
import type { CheckRecord } from "../projections/checkRow.ts";
import type { CheckAt } from "../projections/SpindleStatus.ts";

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

/** @param baseline  where the spindle's baseline stands, from its status */
export function toSummary(row: CheckRecord, baseline: CheckAt | null): CheckSummary {
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
    isBaseline: row.n === baseline?.[1],
    voided: row.state === "valid" ? undefined : { reason: row.ended_reason ?? "", how: row.state },
    remeasure: row.remeasure_n !== null,
    place: row.n,
  };
}
