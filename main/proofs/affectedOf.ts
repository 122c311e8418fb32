import type { AffectedRow, AffectedView } from "../../app/contract/proofViews.ts";
import type { Check } from "../../app/ledger/check.ts";
import { affectedChecks, type CheckInDoubt, type Found } from "../../app/proof/after/affectedChecks.ts";
import { toCheckRow } from "../handlers/rows.ts";
import { type Db, prepared } from "../store/db.ts";
import { entriesOfKind } from "../store/ledger/readEntry.ts";
import type { CheckRecord } from "../store/projections/checkRow.ts";
import { readStatus } from "../store/projections/SpindleStatus.ts";
import { readAdapter } from "../store/records/adapters.ts";
import { toSummary } from "../store/records/checkSummary.ts";
import { readCheck } from "../store/records/checks.ts";
import { proofsOf, readProof } from "../store/records/proofs.ts";
import { readSpindle } from "../store/records/spindles.ts";

export type Doubt =
  | { readonly proofId: string }
  | { readonly adapterId: string; readonly scale: number; readonly relative: number };

type Watch = { readonly goOn: () => void; readonly progress: (done: number, total: number) => void };

/** Where the doubt begins, what was found, and which checks were made with what was found off. */
type Scope = {
  readonly since: AffectedView["since"];
  readonly foundOn: string | undefined;
  readonly found: Found;
  readonly column: "gauge_id" | "adapter_id";
  readonly toolId: string;
  readonly fromMs: number;
  /** Whether a check was corrected otherwise than by what was found. */
  readonly concerns: (check: Check) => boolean;
};

/**
 * The checks that count, made with a gauge since the last proof before this one whose curve was taken (or with an adapter since it was
 * calibrated), and what each would say with what was found. Long with many checks: it belongs in a job.
 * @returns  undefined where there is no such proof or adapter
 */
export function affectedOf(db: Db, doubt: Doubt, watch: Watch): AffectedView | undefined {
  const scope = "proofId" in doubt ? ofGauge(db, doubt.proofId) : ofAdapter(db, doubt);
  if (scope === undefined) return undefined;
  const records = prepared<CheckRecord>(
    db,
    `SELECT * FROM check_row WHERE ${scope.column} = ? AND measured_at_ms >= ? AND state = 'valid' ORDER BY measured_at_ms DESC, n DESC`,
  ).all(scope.toolId, scope.fromMs);
  const filed: { readonly record: CheckRecord; readonly check: Check }[] = [];
  for (const [i, record] of records.entries()) {
    watch.goOn();
    const check = readCheck(db, record.check_id)?.check;
    if (check !== undefined && scope.concerns(check)) filed.push({ record, check });
    watch.progress(i + 1, records.length);
  }
  const judged = affectedChecks(
    filed.map(({ check }) => inDoubt(check)),
    scope.found,
  );
  const names = new Map<string, string>();
  const nameOf = (id: string) => {
    if (!names.has(id)) names.set(id, readSpindle(db, id)?.spindle.name ?? id.slice(-4));
    return names.get(id)!; // just set
  };
  const rows = judged.map((affected, i): AffectedRow => {
    const { record } = filed[i]!; // one for each, in the same order
    const summary = toSummary(record, readStatus(db, record.spindle_id).baseline);
    return { ...affected, row: toCheckRow(summary), spindleName: nameOf(record.spindle_id), marked: summary.remeasure };
  });
  const changed = rows.filter((r) => r.verdictChanges);
  return {
    since: scope.since,
    foundOn: scope.foundOn,
    rows: [...changed, ...rows.filter((r) => !r.verdictChanges)],
    changedCount: changed.length,
  };
}

function ofGauge(db: Db, proofId: string): Scope | undefined {
  const filed = readProof(db, proofId);
  if (filed === undefined) return undefined;
  const { proof } = filed;
  const all = proofsOf(db, proof.gaugeId);
  const place = all.findIndex((p) => p.proof.proofId === proofId);
  const before = all.slice(0, place).findLast((p) => p.proof.curveTaken)?.proof;
  return {
    since: before && { proofId: before.proofId, on: before.on },
    foundOn: proof.on,
    found: { curve: proof.curve ?? undefined },
    column: "gauge_id",
    toolId: proof.gaugeId,
    fromMs: before === undefined ? 0 : Date.parse(before.provedAt),
    concerns: (check) => check.corrections.curve?.proofId !== proofId,
  };
}

function ofAdapter(db: Db, { adapterId, scale, relative }: Extract<Doubt, { adapterId: string }>): Scope | undefined {
  const adapter = readAdapter(db, adapterId);
  if (adapter === undefined) return undefined;
  // Already filed, the scale found stands as the newest version: the one before it is in doubt.
  const isFiled = adapter.scale === scale;
  const inDoubt = isFiled ? adapter.version - 1 : adapter.version;
  const calibratedOn = entriesOfKind(db, "adapter").findLast(
    ({ body }) => body.adapterId === adapterId && body.version === inDoubt,
  )?.body.calibratedOn;
  return {
    since: calibratedOn === undefined ? undefined : { proofId: undefined, on: calibratedOn },
    foundOn: isFiled ? adapter.calibratedOn : undefined,
    found: { adapter: { scale, relative } },
    column: "adapter_id",
    toolId: adapterId,
    fromMs: 0,
    concerns: (check) => check.corrections.adapterVersion === inDoubt,
  };
}

function inDoubt(check: Check): CheckInDoubt {
  const { limits, rule, cautionDrop, actDrop } = check;
  return {
    checkId: check.checkId,
    verdict: check.verdict,
    valueN: check.valueN,
    netN: check.series.meanN,
    adapterScale: check.corrections.adapterScale,
    budget: check.budget,
    baseline: check.baseline,
    previous: check.previous,
    terms: { limits, rule, cautionDrop, actDrop },
  };
}
