import type { Parsed } from "../../../app/contract/methods.ts";
import type { AffectedView, GaugeProofs, ProofPage, ProofRow, RunningProof } from "../../../app/contract/proofViews.ts";
import { AppError } from "../../../app/contract/result.ts";
import type { Adjustment, Proof, Reference, StoredPlan } from "../../../app/ledger/proof.ts";
import type { Gauge } from "../../../app/ledger/register.ts";
import type { Stepped } from "../../../app/proof/plan/proofSteps.ts";
import type { ProofTerms } from "../../../app/proof/result/proveReadings.ts";
import { outcomeOf } from "../../../main/proofs/outcomeOf.ts";
import type { ProofDraft } from "../../../main/proofs/ProofDraft.ts";
import { proofBody } from "../../../main/proofs/proofBody.ts";
import { driftOf } from "../../../main/proofs/provedHistory.ts";
import { takeRefused } from "../../../main/proofs/refusals.ts";
import { runningProof } from "../../../main/proofs/runningProof.ts";
import { closedLink } from "../fakeCore.ts";

/** The proofs of the fake core: the real rules over a plain list, with no port and no disk. */
export class FakeProofs {
  references: Reference[] = [];
  plans: StoredPlan[] = [];
  tables: NonNullable<ProofTerms["tables"]> = {};
  filed: Proof[] = [];
  adjustments: Adjustment[] = [];
  draft: ProofDraft | undefined;
  affected: AffectedView = { since: undefined, foundOn: undefined, rows: [], changedCount: 0 };
  readonly marked: string[] = [];
  readonly today = "2026-11-16";

  view(): RunningProof {
    return runningProof(this.inWork(), closedLink);
  }

  inWork(): ProofDraft {
    if (this.draft === undefined) throw new AppError("notFound", "No proof is in work.", { key: "noProof" });
    return this.draft;
  }

  /** What an act makes of the proof in work, or its refusal in the core's own words. */
  step(stepped: Stepped): RunningProof {
    if (stepped.kind === "refused") throw takeRefused(stepped.why);
    this.draft = { ...this.inWork(), planned: stepped.state };
    return this.view();
  }

  outcome() {
    return outcomeOf(this.inWork(), this.#asFiled(), this.today, this.tables);
  }

  file({ takeCurve, dueOn }: Parsed<"proof.file">): ProofPage {
    const draft = this.inWork();
    const proof = proofBody(draft, this.outcome(), {
      provedAtMs: draft.startedAtMs + 3_600_000,
      offsetMinutes: 60,
      on: this.today,
      adjustmentId: null,
      curveTaken: takeCurve ?? false,
      dueOn: dueOn ?? null,
      programVersion: "0.1.0",
      clockDoubtful: false,
    });
    this.filed = [...this.filed, proof];
    this.draft = undefined;
    return this.page(proof.proofId);
  }

  page(proofId: string): ProofPage {
    const proof = this.filed.find((one) => one.proofId === proofId);
    if (proof === undefined) throw new AppError("notFound", "There is no such proof.", { key: "noProof" });
    const adjustment = this.adjustments.find(({ asFoundProofId }) => asFoundProofId === proofId);
    return {
      proof,
      row: row(proof),
      operatorName: undefined,
      adjustment,
      other: undefined,
      drift: driftOf(this.#asFiled()),
      nextDue: undefined,
      origin: "0198a000-0000-7000-8000-00000000aaaa",
      seq: 12,
      hash: "ab".repeat(32),
    };
  }

  list(gaugeId: string): GaugeProofs {
    const own = this.filed.filter((proof) => proof.gaugeId === gaugeId);
    return {
      rows: own.map(row).toReversed(),
      adjustments: this.adjustments.filter((one) => one.gaugeId === gaugeId),
      drift: driftOf(own.map((proof) => ({ proof, seq: 0 }) as never)),
      nextDue: undefined,
    };
  }

  /** A proof that is begun, without a register behind it. */
  begin(input: Parsed<"proof.start">, gauge: Gauge, proofId: string, nowMs: number): RunningProof {
    const reference = this.references.find(({ referenceId }) => referenceId === input.referenceId);
    if (reference === undefined) throw new AppError("notFound", "There is no such reference.");
    this.draft = {
      proofId,
      as: input.as,
      gauge,
      adapter: undefined,
      reference,
      operatorId: input.operatorId ?? undefined,
      gaugeRead: input.gaugeRead,
      referenceRead: reference.kind === "weights" ? "weights" : reference.kind === "typed" ? "typed" : "live",
      auto: false,
      about: {
        customer: input.customer ?? undefined,
        workOrder: undefined,
        edition: undefined,
        accreditation: input.accreditation ?? undefined,
        note: input.note ?? "",
        conditions: { temperatureC: null, temperatureRangeK: null, pressurePa: null, humidity: null },
        choices: { degree: null, mpe: null, rule: null, resolutionN: null, perKelvin: null, ...input.choices },
      },
      startedAtMs: nowMs,
      planned: { plan: input.plan, gaugeCapacityN: gauge.capacityN, events: [] },
      problems: [],
      unit: "kN",
      offset: null,
    };
    return this.view();
  }

  #asFiled() {
    return this.filed.map((proof) => ({ proof, seq: 0 }) as never); // what reads the list reads the proofs only
  }
}

const row = (proof: Proof): ProofRow => ({
  proofId: proof.proofId,
  gaugeId: proof.gaugeId,
  adapterId: proof.adapterId ?? undefined,
  on: proof.on,
  provedAtMs: Date.parse(proof.provedAt),
  as: proof.as,
  method: proof.plan.method,
  judged: proof.judged,
  class: proof.result?.class ?? undefined,
  curveTaken: proof.curveTaken,
  inUse: proof.curveTaken,
  change: proof.change,
  worstPct: Math.max(0, ...(proof.result?.steps.map(({ uncertainty }) => uncertainty.expandedPct ?? 0) ?? [])),
  dueOn: proof.dueOn ?? undefined,
});
