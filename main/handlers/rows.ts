import type { AdapterRow, CheckRow, GaugeRow, OperatorView, SpindleRow } from "../../app/contract/recordViews.ts";
import type { Adapter, Gauge } from "../../app/ledger/register.ts";
import type { CheckSummary } from "../store/records/checkSummary.ts";
import type { OperatorRecord } from "../store/records/operators.ts";
import type { SpindleStanding } from "../store/records/spindles.ts";

/** What the store says, in the shapes pages get. */

export function toCheckRow(summary: CheckSummary): CheckRow {
  const { place: _place, offsetMinutes: _offset, reason: _reason, remeasure: _remeasure, voided, ...row } = summary;
  return { ...row, voided: voided && { reason: voided.reason } };
}

export function toSpindleRow(standing: SpindleStanding): SpindleRow {
  const baselineN = standing.baseline?.valueN;
  return {
    spindle: standing.spindle,
    verdict: standing.stop === undefined ? standing.last?.verdict : "stop",
    stopped: standing.stop !== undefined,
    last: standing.last && toCheckRow(standing.last),
    checkCount: standing.checkCount,
    baselineN,
    spark: baselineN === undefined || baselineN <= 0 ? [] : standing.recent.map((point) => point.valueN / baselineN),
  };
}

export function toGaugeRow(gauge: Gauge, checkCount: number, today: string, foundOff: boolean): GaugeRow {
  return { gauge, checkCount, proofState: foundOff ? "off" : proofState(gauge.provedOn, gauge.dueOn, today) };
}

export function toAdapterRow(adapter: Adapter, checkCount: number, today: string): AdapterRow {
  return { adapter, checkCount, proofState: proofState(adapter.calibratedOn, adapter.dueOn, today) };
}

export function toOperatorView({ operatorId, role, state, person }: OperatorRecord, byInitials: boolean): OperatorView {
  const shown = byInitials ? person?.initials : person?.name;
  return {
    operatorId,
    role,
    state,
    name: shown ?? operatorId.slice(-4),
    initials: person?.initials,
    fullName: person?.name,
    hasPin: person?.pin !== undefined,
  };
}

/** Plain dates compare as text. */
function proofState(done: string | undefined, due: string | undefined, today: string): AdapterRow["proofState"] {
  if (done === undefined) return "none";
  return due !== undefined && due < today ? "pastDue" : "current";
}
