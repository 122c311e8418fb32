import { z } from "zod";
import { directions } from "../proof/data/ProofReading.ts";
import { proofMethods } from "../proof/plan/ProofPlan.ts";
import { remark } from "./check.ts";
import {
  forceN,
  fraction,
  id,
  instant,
  name,
  note,
  offsetMinutes,
  plainDate,
  positiveN,
  reasonText,
  state,
  strict,
  unit,
} from "./fields.ts";
import { proofResult } from "./proofResult.ts";
import { adapter, decisionRule, gauge, gaugeCurve } from "./register.ts";

/** What gauges are proved against, how, and what came of it. A proof keeps all of it as it stood on that day. */

const line = z.string().trim().max(200);
const text = z.string().trim().max(2_000);
const positive = z.number().positive().max(1e6);
const notNegative = z.number().min(0).max(1e6);

/** A weight of a rig: figures as its certificate states them, standard uncertainties (k = 1). */
export const rigWeight = strict({
  /** What is painted on it: how a reading names it. */
  label: z.string().trim().min(1, "a weight needs a label").max(20),
  massKg: positive,
  massKind: z.enum(["true", "conventional"]),
  massStandardKg: notNegative,
  densityKgM3: positive,
  densityStandardKgM3: notNegative,
});

/** Local gravity: measured, or worked out from latitude and height. */
export const siteGravity = z.discriminatedUnion("from", [
  strict({ from: z.literal("measured"), value: positive, standard: notNegative }),
  strict({ from: z.literal("place"), latitudeDeg: z.number(), heightM: z.number() }),
]);

const weightRig = strict({
  /** In the order in which they are hung, the hanger first. */
  weights: z.array(rigWeight).min(1, "a rig has at least one weight").max(60),
  gravity: siteGravity,
});

const transducer = strict({
  /** Net indication to force, newtons, with its own uncertainty. */
  curve: gaugeCurve,
  capacityN: positiveN,
  /** As its certificate says it: "00", "0.5", "AA". */
  class: z.string().trim().max(20).optional(),
  calibratedOn: plainDate,
  dueOn: plainDate,
  /** Greatest change in a year, as a share: a half-width. */
  driftPerYear: fraction,
  /** How its lines are read when it stands on a port of its own. */
  patternId: id.optional(),
  unitShown: unit.optional(),
});

const typedValues = strict({
  /** Standard uncertainty (k = 1) of a typed force: a share of it, and newtons beside. */
  relative: fraction,
  standardN: z.number().min(0).max(1e9),
  capacityN: positiveN.optional(),
  dueOn: plainDate.optional(),
});

/** A reference has exactly the section its kind names. */
export const referenceFields = strict({
  referenceId: id,
  name,
  serial: z.string().trim().max(80).optional(),
  kind: z.enum(["weights", "transducer", "typed"]),
  weights: weightRig.optional(),
  transducer: transducer.optional(),
  typed: typedValues.optional(),
  /** Certificate by number, issuer and day: what it is traceable by. */
  certificate: text.optional(),
  note: note.optional(),
  state,
});
export const reference = referenceFields.refine((r) => r[r.kind] !== undefined, {
  message: "a reference needs the figures of its kind",
});

/** As `app/proof/plan/ProofPlan.ts` has it. */
const planFields = {
  name,
  method: z.enum(proofMethods),
  loadsN: z.array(positiveN).min(1, "a plan has at least one load").max(40),
  preloads: z.number().int().min(0).max(10),
  runs: z
    .array(
      strict({ run: z.string().trim().min(1).max(20), positionDeg: z.number().min(0).max(360), falling: z.boolean() }),
    )
    .min(1, "a plan has at least one run")
    .max(20),
  creep: z.boolean(),
  dwellS: z.number().min(0).max(3_600),
  readS: z.number().positive().max(600),
  restS: z.number().min(0).max(3_600),
};
export const proofPlan = strict(planFields);
/** A plan under a name of its own, to be used again. */
export const plan = strict({ planId: id, ...planFields, note: note.optional(), state });

export const permissibleError = z.discriminatedUnion("kind", [
  strict({ kind: z.enum(["relative", "ofGreatest"]), fraction: z.number().positive().max(1) }),
  strict({ kind: z.literal("absolute"), force: positiveN }),
]);

/** What the method was told beside the readings. */
export const proofChoices = strict({
  /** Degree of the curve; null: the method's own choice. */
  degree: z.number().int().min(1).max(12).nullable(),
  mpe: permissibleError.nullable(),
  rule: decisionRule.nullable(),
  resolutionN: positiveN.nullable(),
  /** Change of the gauge's sensitivity a kelvin, as a share. */
  perKelvin: fraction.nullable(),
});

/** Surroundings; null where nobody read them. */
export const proofConditions = strict({
  temperatureC: z.number().min(-20).max(60).nullable(),
  /** By how much it went up and down in all. */
  temperatureRangeK: z.number().min(0).max(60).nullable(),
  pressurePa: z.number().min(50_000).max(110_000).nullable(),
  humidity: fraction.nullable(),
});

/** One taking, as it was, and why it was taken again where it was. */
const filedTaking = strict({
  act: z.number().int().min(0),
  at: instant,
  run: z.string().max(20),
  positionDeg: z.number(),
  direction: z.enum(directions),
  step: z.number().int().min(1).nullable(),
  targetN: forceN,
  referenceN: forceN,
  referenceStandardN: z.number().min(0),
  /** As shown, the zero not taken off. */
  indicationN: forceN,
  /** Readings averaged; 1 for a typed one. */
  n: z.number().int().min(1),
  referenceTyped: z.string().max(40).nullable(),
  indicationTyped: z.string().max(40).nullable(),
  /** Labels of the weights that hung. */
  weights: z.array(z.string().max(20)).max(60).nullable(),
  replaced: strict({ at: instant, reason: z.string().max(500) }).nullable(),
});

/** See `app/proof/method/proofRefusal.ts`; a code of a newer program is kept as it stands. */
const refusal = strict({ code: z.string().max(60), figures: z.array(z.number()).max(10).readonly() });

export const proof = strict({
  proofId: id,
  gaugeId: id,
  adapterId: id.nullable(),
  referenceId: id,
  operatorId: id.nullable(),
  /** Register as it stood. */
  gauge,
  adapter: adapter.nullable(),
  reference,
  /** Before any adjustment, or after one. */
  as: z.enum(["found", "left"]),
  adjustmentId: id.nullable(),
  startedAt: instant,
  provedAt: instant,
  offsetMinutes,
  /** The day in the works' time zone. */
  on: plainDate,
  customer: line.nullable(),
  workOrder: line.nullable(),
  /** Edition of the standard the laboratory worked by, in its words. */
  edition: line.nullable(),
  /** The laboratory's own accreditation text; null: the report says that it is not an accredited certificate. */
  accreditation: text.nullable(),
  note: note.nullable(),
  conditions: proofConditions,
  /** Air and gravity the weights were reckoned with; null for other references. */
  site: strict({
    airDensityKgM3: z.number(),
    airDensityStandardKgM3: z.number(),
    gravity: z.number(),
    gravityStandard: z.number(),
  }).nullable(),
  plan: proofPlan,
  choices: proofChoices,
  /** Unit the gauge showed, or the typed values were written in. */
  unit,
  takings: z.array(filedTaking).max(5_000),
  /** Each time it was put down, and how it was taken up: from where it stood, or from the start of the run. */
  pauses: z.array(strict({ at: instant, reason: z.string().max(500), from: z.enum(["here", "runStart"]).nullable() })),
  /** Between the two ports, where both were read live; see `app/proof/reference/alignStreams.ts`. */
  offset: strict({ offsetS: z.number(), halfWidthS: z.number(), correlation: z.number() }).nullable(),
  /** What stood against plan or reference when it was begun. */
  problems: z.array(remark),
  result: proofResult.nullable(),
  /** Why there is no result; null when there is one. */
  refused: z.string().max(500).nullable(),
  /** The same as a code with its figures; absent in entries older than it. */
  refusedWhy: refusal.optional(),
  /** For correcting with: net indication to force. Null with the reason beside it. */
  curve: gaugeCurve.nullable(),
  curveRefused: z.string().max(500).nullable(),
  curveRefusedWhy: refusal.optional(),
  /** Whether the gauge is corrected with this curve from here on. */
  curveTaken: z.boolean(),
  judged: z.enum(["good", "off", "cannotTell"]),
  /** Against the curve the gauge had before, where they lie furthest apart. */
  change: strict({ atN: z.number(), relative: z.number(), expanded: z.number() }).nullable(),
  dueOn: plainDate.nullable(),
  programVersion: z.string().max(40),
  clockDoubtful: z.boolean(),
});

/** What was done to a gauge between a proof as found and one as left. Its curve is void from here on. */
export const adjustment = strict({
  adjustmentId: id,
  gaugeId: id,
  at: instant,
  offsetMinutes,
  what: reasonText,
  /** The proof that showed it was needed. */
  asFoundProofId: id.nullable(),
  operatorId: id.nullable(),
});

export type Reference = z.infer<typeof reference>;
export type StoredPlan = z.infer<typeof plan>;
export type ProofChoices = z.infer<typeof proofChoices>;
export type ProofConditions = z.infer<typeof proofConditions>;
export type FiledTaking = z.infer<typeof filedTaking>;
export type Proof = z.infer<typeof proof>;
export type Adjustment = z.infer<typeof adjustment>;
