import { z } from "zod";
import { id, note, plainDate, reasonText } from "../ledger/fields.ts";
import { type Adjustment, plan, proofChoices, proofConditions, proofPlan, type StoredPlan } from "../ledger/proof.ts";
import type { ProofPlan } from "../proof/plan/ProofPlan.ts";
import { source } from "./linkViews.ts";
import { looseReference } from "./looseReference.ts";
import { method, nothing } from "./method.ts";
import type {
  AffectedView,
  FactorView,
  GaugeProofs,
  ProofOutcome,
  ProofPage,
  ProofTableRow,
  ReferenceRow,
  RunningProof,
} from "./proofViews.ts";

const line = z.string().trim().max(200).nullable();
const about = {
  operatorId: id.nullable().optional(),
  customer: line.optional(),
  workOrder: line.optional(),
  edition: line.optional(),
  accreditation: z.string().trim().max(2_000).nullable().optional(),
  note: note.optional(),
  /** What is left out stays as it was; at the start: unknown. */
  conditions: proofConditions.partial().optional(),
  choices: proofChoices.partial().optional(),
  auto: z.boolean().optional(),
};
const act = { proofId: id, index: z.number().int().min(0) };
/** A force with its unit as typed: "17,92 kN". A bare number is in the gauge's own unit. */
const typed = z.string().max(40);
const labels = z.array(z.string().max(20)).max(60);
const figures = z.strictObject({ referenceN: z.number(), netN: z.number() });

/** Calls about the proof of gauges and adapters. Each call on the proof in work answers all of it. */
export const proofs = {
  "references.list": method<readonly ReferenceRow[]>()(nothing),
  "references.save": method<ReferenceRow>()(looseReference),

  "plans.list": method<readonly StoredPlan[]>()(nothing),
  /** One preset for each method, for a gauge of this capacity. */
  "plans.presets": method<readonly ProofPlan[]>()(z.strictObject({ capacityN: z.number().positive().max(1e9) })),
  "plans.save": method<StoredPlan>()(plan.extend({ planId: id.optional() })),

  /** Begins a proof; refused while another is in work, and for what `stops` a plan. */
  "proof.start": method<RunningProof>()(
    z.strictObject({
      gaugeId: id,
      adapterId: id.nullable().optional(),
      referenceId: id,
      as: z.enum(["found", "left"]),
      plan: proofPlan,
      gaugeRead: z.enum(["live", "typed"]),
      /** Absent: weights for a rig, live for a transducer where the gauge is live too, else typed. */
      referenceRead: z.enum(["live", "typed", "weights"]).optional(),
      ...about,
    }),
  ),
  /** Undefined when none is in work. */
  "proof.state": method<{ readonly proof: RunningProof | undefined }>()(nothing),
  "proof.describe": method<RunningProof>()(z.strictObject({ proofId: id, ...about })),
  /** Cautions read, gauge mounted or turned, preload made. */
  "proof.confirm": method<RunningProof>()(z.strictObject(act)),
  /** Takes the next reading off the gauge's port. The reference is read live, or `weights` or `reference` say it (absent: what was asked for). */
  "proof.take": method<RunningProof>()(
    z.strictObject({ ...act, weights: labels.optional(), reference: typed.optional() }),
  ),
  /** The same with the gauge's figure typed in. */
  "proof.type": method<RunningProof>()(
    z.strictObject({ ...act, indication: typed, weights: labels.optional(), reference: typed.optional() }),
  ),
  "proof.repeat": method<RunningProof>()(z.strictObject({ ...act, reason: reasonText })),
  /** Leaves the next act out, with the reason: the method says what it costs. */
  "proof.skip": method<RunningProof>()(z.strictObject({ ...act, reason: reasonText })),
  "proof.putDown": method<RunningProof>()(z.strictObject({ proofId: id, reason: reasonText })),
  "proof.resume": method<RunningProof>()(z.strictObject({ proofId: id, from: z.enum(["here", "runStart"]) })),
  /** Throws the proof in work away; what was taken is gone. */
  "proof.discard": method<{ readonly done: true }>()(z.strictObject({ proofId: id })),
  "proof.result": method<ProofOutcome>()(z.strictObject({ proofId: id })),
  /** Files it, finished or not. Twice for the same proof answers the one filed. */
  "proof.file": method<ProofPage>()(
    z.strictObject({
      proofId: id,
      /** Correct the gauge with its curve from here on. Absent: where it can be and the proof is good. */
      takeCurve: z.boolean().optional(),
      dueOn: plainDate.optional(),
      clockConfirmed: z.boolean().optional(),
    }),
  ),

  /** The reference transducer's own port, beside the gauge's. */
  "proof.openReference": method<RunningProof>()(z.strictObject({ proofId: id, source, patternId: id.optional() })),
  "proof.closeReference": method<RunningProof>()(z.strictObject({ proofId: id })),

  "adjustments.save": method<Adjustment>()(
    z.strictObject({
      gaugeId: id,
      what: reasonText,
      asFoundProofId: id.optional(),
      operatorId: id.optional(),
    }),
  ),

  /** The tables of limits in force: as shipped, or as the laboratory has entered them. */
  "proofs.tables": method<readonly ProofTableRow[]>()(nothing),
  /** Corrects a table of limits by the laboratory's own edition, as JSON of the shipped form; null takes the shipped one again. */
  "proofs.saveTable": method<{ readonly done: true }>()(
    z.strictObject({ table: z.enum(["iso376", "astmE74"]), value: z.json() }),
  ),

  "proofs.list": method<GaugeProofs>()(z.strictObject({ gaugeId: id })),
  "proofs.get": method<ProofPage>()(z.strictObject({ proofId: id })),
  /** Checks since the last good proof before this one (or, for an adapter, since its last calibration), held against what was found. */
  "proofs.affected": method<AffectedView>()(
    z.union([
      z.strictObject({ proofId: id }),
      z.strictObject({
        adapterId: id,
        scale: z.number().positive().max(10),
        relative: z.number().positive().max(1),
      }),
    ]),
  ),
  "proofs.markRemeasure": method<{ readonly marked: number }>()(
    z.strictObject({
      checkIds: z.array(id).min(1, "nothing is marked").max(10_000),
      reason: reasonText,
      operatorId: id.optional(),
    }),
  ),

  /** An adapter's scale from the same loads with and without it; with `file` it becomes the adapter's next version. */
  "adapters.factor": method<FactorView>()(
    z.strictObject({
      adapterId: id,
      /** Compared with another adapter whose scale is known; absent: with the gauge alone. */
      knownAdapterId: id.optional(),
      from: z.union([
        z.strictObject({
          pairs: z
            .array(z.strictObject({ run: z.string().trim().min(1).max(20), without: figures, withIt: figures }))
            .min(1)
            .max(500),
        }),
        /** Two filed proofs of one gauge, paired by run and step. */
        z.strictObject({ withoutProofId: id, withProofId: id }),
      ]),
      /** Relative standard uncertainty (k = 1) of the reference's ratio between the two; absent: that of its proofs, or 0. */
      referenceRelative: z.number().min(0).max(1).optional(),
      file: z.boolean(),
      dueOn: plainDate.optional(),
    }),
  ),
} as const;
