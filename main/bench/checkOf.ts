import type { Budget } from "../../app/correction/Budget.ts";
import type { Cycle } from "../../app/cycle/Cycle.ts";
import type { LinePattern } from "../../app/gauge/linePattern.ts";
import type { Check, FiledCycle } from "../../app/ledger/check.ts";
import type { Reason } from "../../app/verdict/Judgement.ts";
import { termsOf } from "../../app/verdict/termsOf.ts";
import { correctionsOf } from "./corrections.ts";
import type { DraftState } from "./DraftState.ts";
import type { FormFacts } from "./FormFacts.ts";
import type { Formed } from "./form.ts";

export type CheckCircumstances = {
  readonly measuredAtMs: number;
  readonly offsetMinutes: number;
  readonly source: Check["source"];
  readonly unit: string;
  readonly rateHz: number | undefined;
  readonly patternId: string | undefined;
  readonly pattern: LinePattern | undefined;
  /** SHA-256 of each cycle's packed readings, by cycle id. */
  readonly waveformHashes: ReadonlyMap<string, string>;
  readonly programVersion: string;
  readonly clockDoubtful: boolean;
};

/** The ledger body of a series: everything that led to its verdict, as it stands now. */
export function checkOf(state: DraftState, formed: Formed, facts: FormFacts, now: CheckCircumstances): Check {
  const { forming } = formed;
  const corrections = correctionsOf(facts);
  const spindle = facts.spindle!; // `cannotFile` has refused a series without one
  return {
    checkId: state.seriesId,
    spindleId: spindle.spindleId,
    adapterId: state.tag.adapterId ?? null,
    gaugeId: state.tag.gaugeId ?? null,
    operatorId: state.tag.operatorId ?? null,
    measuredAt: new Date(now.measuredAtMs).toISOString(),
    offsetMinutes: now.offsetMinutes,
    source: now.source,
    reason: state.reason,
    spindleWarm: state.spindleWarm ?? null,
    temperatureC: state.temperatureC ?? null,
    counter: state.counter ?? null,
    note: state.note === "" ? null : state.note,
    unit: state.typed?.unit ?? now.unit,
    rawLine: state.typed?.text ?? null,
    rateHz: now.rateHz ?? null,
    patternId: now.patternId ?? null,
    pattern: now.pattern === undefined ? null : plain(now.pattern),
    cycles: state.cycles.map((c, i) =>
      filedCycle(c.cycleId, formed.cycles[i]!, c.dropped, now.waveformHashes.get(c.cycleId)),
    ),
    series: {
      n: formed.figures.n,
      basis: formed.figures.basis,
      meanN: formed.figures.meanN ?? null,
      sN: formed.figures.sN ?? null,
      rangeN: formed.figures.rangeN ?? null,
      outliers: [...formed.figures.outliers],
    },
    corrections: {
      curve: facts.gauge?.curve ?? null,
      adapterScale: corrections.adapter?.scale ?? 1,
      adapterVersion: corrections.adapter?.version ?? null,
    },
    valueN: forming?.valueN ?? null,
    budget: forming === undefined ? null : filedBudget(forming.budget),
    ...termsOf(spindle, facts.works),
    baseline: formed.baseline ?? null,
    previous: formed.previous ?? null,
    verdict: forming?.judgement.verdict ?? "cannotTell",
    conformity: forming?.judgement.conformity ?? "undecided",
    zone: forming?.judgement.zone ?? null,
    probabilityConforming: forming?.judgement.probabilityConforming ?? null,
    dropFromBaseline: forming?.judgement.dropFromBaseline ?? null,
    dropFromPrevious: forming?.judgement.dropFromPrevious ?? null,
    reasons: (forming?.judgement.reasons ?? [{ code: "noValidForce" as const }]).map(filedReason),
    weakenedBy: [...(forming?.weakenedBy ?? [])],
    warnings: formed.warnings.map(({ weight: _weight, ...remark }) => remark),
    gapsS: state.sessions.flatMap((s) => s.gapsS),
    programVersion: now.programVersion,
    clockDoubtful: now.clockDoubtful,
    roundId: state.roundId ?? null,
    workOrder: state.workOrder ?? null,
  };
}

function filedCycle(
  cycleId: string,
  cycle: Cycle,
  dropped: { readonly reason: string } | undefined,
  waveformHash: string | undefined,
): FiledCycle {
  return {
    cycleId,
    startIndex: cycle.startIndex,
    endIndex: cycle.endIndex,
    startS: cycle.startS ?? null,
    endS: cycle.endS ?? null,
    peakN: cycle.peakN,
    peakIndex: cycle.peakIndex,
    settledN: cycle.settledN ?? null,
    settledUncertaintyN: cycle.settledUncertaintyN ?? null,
    settledWindow: cycle.settledWindow ?? null,
    overshoot: cycle.overshoot ?? null,
    riseTimeS: cycle.riseTimeS ?? null,
    noiseN: cycle.noiseN ?? null,
    slopeNPerS: cycle.slopeNPerS ?? null,
    creep: cycle.creep ?? null,
    zeroBeforeN: cycle.zeroBeforeN ?? null,
    zeroAfterN: cycle.zeroAfterN ?? null,
    zeroN: cycle.zeroN,
    flags: [...cycle.flags],
    dropped: dropped ?? null,
    waveformHash: waveformHash ?? null,
  };
}

/** JSON has no infinity: very many degrees of freedom lie in the ledger as null. */
const finite = (value: number) => (Number.isFinite(value) ? value : null);

function filedBudget(budget: Budget): Check["budget"] {
  return {
    ...budget,
    degreesOfFreedom: finite(budget.degreesOfFreedom),
    contributions: budget.contributions.map((c) => ({ ...c, degreesOfFreedom: finite(c.degreesOfFreedom) })),
  };
}

/** Without the members that are absent: canonical JSON knows no undefined. */
function filedReason(reason: Reason): Check["reasons"][number] {
  return Object.fromEntries(Object.entries(reason).filter(([, v]) => v !== undefined)) as Check["reasons"][number]; // the same members, fewer
}

const plain = (value: unknown) => JSON.parse(JSON.stringify(value)) as Record<string, never>; // a pattern is plain JSON by its schema
