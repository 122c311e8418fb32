import type { z } from "zod";
import { type Proof, proof as proofSchema } from "../../app/ledger/proof.ts";
import { nextAct } from "../../app/proof/plan/nextAct.ts";
import { type ProofAct, proofActs } from "../../app/proof/plan/proofActs.ts";
import { runBegunAnew } from "../../app/words/replacedReason.ts";
import type { Outcome } from "./outcomeOf.ts";
import type { ProofDraft } from "./ProofDraft.ts";
import { filedSite } from "./weights.ts";

export type Filing = {
  readonly provedAtMs: number;
  readonly offsetMinutes: number;
  readonly on: string;
  readonly adjustmentId: string | null;
  readonly curveTaken: boolean;
  readonly dueOn: string | null;
  readonly programVersion: string;
  readonly clockDoubtful: boolean;
};

/** The proof as it is filed: everything that led to its result, as it stood. */
export function proofBody(draft: ProofDraft, outcome: Outcome, filing: Filing): Proof {
  const { about, planned } = draft;
  const body: z.input<typeof proofSchema> | Record<string, unknown> = {
    proofId: draft.proofId,
    gaugeId: draft.gauge.gaugeId,
    adapterId: draft.adapter?.adapterId ?? null,
    referenceId: draft.reference.referenceId,
    operatorId: draft.operatorId ?? null,
    gauge: draft.gauge,
    adapter: draft.adapter ?? null,
    reference: draft.reference,
    as: draft.as,
    adjustmentId: filing.adjustmentId,
    startedAt: new Date(draft.startedAtMs).toISOString(),
    provedAt: new Date(filing.provedAtMs).toISOString(),
    offsetMinutes: filing.offsetMinutes,
    on: filing.on,
    customer: about.customer ?? null,
    workOrder: about.workOrder ?? null,
    edition: about.edition ?? null,
    accreditation: about.accreditation ?? null,
    note: about.note === "" ? null : about.note,
    conditions: about.conditions,
    site: filedSite(draft.reference, about.conditions),
    plan: planned.plan,
    choices: { ...about.choices, resolutionN: about.choices.resolutionN ?? draft.gauge.resolutionN ?? null },
    unit: draft.unit ?? "N",
    takings: takingsOf(draft),
    pauses: pausesOf(draft),
    offset: draft.offset,
    problems: problemsOf(draft),
    result: outcome.result ?? null,
    refused: outcome.refused ?? null,
    refusedWhy: outcome.refusedWhy,
    curve: outcome.curve ?? null,
    curveRefused: outcome.curveRefused ?? null,
    curveRefusedWhy: outcome.curveRefusedWhy,
    curveTaken: filing.curveTaken,
    judged: outcome.judged,
    change: outcome.change,
    dueOn: filing.dueOn,
    programVersion: filing.programVersion,
    clockDoubtful: filing.clockDoubtful,
  };
  return proofSchema.parse(JSON.parse(JSON.stringify(body))); // drops what is undefined, as the ledger's form would
}

/** Every taking in its order; what was taken again, or lies in a run begun anew, says why it does not count. */
function takingsOf({ planned }: ProofDraft): unknown[] {
  const acts = proofActs(planned.plan);
  const rows: { act: number; replaced: { at: string; reason: string } | null }[] = [];
  for (const [i, event] of planned.events.entries()) {
    if (event.kind === "taken") rows.push(takingRow(acts[event.act]!, event));
    const replace = (holds: (act: number) => boolean, at: string, reason: string) => {
      for (const row of rows) if (row.replaced === null && holds(row.act)) row.replaced = { at, reason };
    };
    if (event.kind === "repeat") replace((act) => act === event.act, event.at, event.reason);
    if (event.kind === "takenUp" && event.from === "runStart") {
      const before = nextAct({ ...planned, events: planned.events.slice(0, i + 1) });
      const run = before.kind === "act" ? runOf(before.act) : undefined;
      replace((act) => run !== undefined && runOf(acts[act]!) === run, event.at, runBegunAnew);
    }
  }
  return rows;
}

const runOf = (act: ProofAct) => (act.kind === "cautions" ? undefined : act.run);

type Taken = Extract<ProofDraft["planned"]["events"][number], { kind: "taken" }>;

function takingRow(act: ProofAct, { act: index, at, taking }: Taken) {
  if (act.kind !== "read") throw new RangeError("only a reading can have been taken");
  const { run, positionDeg, direction, step, targetN } = act;
  const { referenceN, referenceStandardN, indicationN, n, referenceTyped, indicationTyped, weights } = taking;
  return {
    ...{ act: index, at, run, positionDeg, direction, step: step ?? null, targetN },
    ...{ referenceN, referenceStandardN, indicationN, n },
    referenceTyped: referenceTyped ?? null,
    indicationTyped: indicationTyped ?? null,
    weights: weights ?? null,
    replaced: null as { at: string; reason: string } | null,
  };
}

function pausesOf({ planned }: ProofDraft): unknown[] {
  return planned.events.flatMap((event, i) => {
    if (event.kind !== "putDown") return [];
    const taken = planned.events.slice(i).find((e) => e.kind === "takenUp");
    return [{ at: event.at, reason: event.reason, from: taken?.from ?? null }];
  });
}

/** What was known against it at the start, and what was left out on the way. */
function problemsOf({ problems, planned }: ProofDraft): unknown[] {
  const skipped = planned.events.flatMap((e) =>
    e.kind === "skipped" ? [{ code: "skipped", about: String(e.act), overriddenWith: e.reason.slice(0, 500) }] : [],
  );
  const known = problems.map(({ code, about }) => ({ code, ...(about === undefined ? {} : { about: String(about) }) }));
  return [...known, ...skipped];
}
