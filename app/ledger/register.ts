import { z } from "zod";
import { roles } from "../people/rights.ts";
import { fraction, id, name, note, plainDate, positiveN, state, strict, unit } from "./fields.ts";

/** What is known of the places, tools and people. A later entry with the same id replaces the earlier one whole. */

export const decisionRule = strict({
  rule: z.enum(["simple", "guarded", "iso14253", "ilacG8", "probability"]),
  coverageFactor: z.number().min(1).max(5).optional(),
  guardFactor: z.number().min(0).max(3).optional(),
  threshold: z.number().gt(0.5).lt(1).optional(),
});

export const limits = strict({
  minimumN: positiveN.optional(),
  warningN: positiveN.optional(),
  nominalN: positiveN.optional(),
  maximumN: positiveN.optional(),
}).refine((l) => inOrder([l.minimumN, l.warningN, l.nominalN, l.maximumN]), {
  message: "limits must rise from minimum over warning and nominal to maximum",
});

function inOrder(values: readonly (number | undefined)[]): boolean {
  const given = values.filter((v) => v !== undefined);
  return given.every((v, i) => i === 0 || given[i - 1]! <= v);
}

/** Names and meaning as in `app/correction/assumptions.ts`. */
const share = z.number().positive("must be above 0").max(0.2, "must not be over 0.2").optional();
export const assumptions = strict({
  unprovedShare: share,
  driftPerYear: share,
  perKelvin: share,
  misalignment: share,
});

export const works = strict({
  worksId: id,
  name,
  timeZone: z.string().min(1).max(64),
  rule: decisionRule,
  cautionDrop: fraction,
  actDrop: fraction,
  unitShown: unit,
  /** Days between routine checks when a spindle names none of its own. */
  intervalDays: z.number().int().min(1).max(3650),
  /** What enters every budget where nothing better is known; absent figures are defaults nobody has confirmed. */
  assumptions: assumptions.optional(),
  /** The laboratory's own accreditation text, for its proofs; absent: reports say that they are no accredited certificate. */
  accreditation: z.string().trim().min(1).max(2_000).optional(),
});

export const spindle = strict({
  spindleId: id,
  name,
  machine: z.string().trim().max(120),
  area: z.string().trim().max(120),
  taper: z.string().trim().max(40),
  unitSerial: z.string().trim().max(80).optional(),
  limits,
  /** Where the limits were taken from, in the user's words. */
  limitsFrom: z.string().max(500).optional(),
  unitShown: unit.optional(),
  rule: decisionRule.optional(),
  intervalDays: z.number().int().min(1).max(3650).optional(),
  intervalToolChanges: z.number().int().min(1).optional(),
  wedgeRatio: z.number().positive().max(20).optional(),
  springPack: z.string().max(500).optional(),
  /** Position on the way through the area, for the walk of a round. */
  order: z.number().int().min(0).optional(),
  note: note.optional(),
  state,
});

export const adapter = strict({
  adapterId: id,
  name,
  taper: z.string().trim().max(40),
  serial: z.string().trim().max(80).optional(),
  /** Force at the taper over force at the gauge. */
  scale: z.number().positive().max(10),
  /** Standard uncertainty (k = 1) of the scale, relative. */
  scaleUncertainty: fraction,
  /** True while nobody has calibrated it and the scale is a plain 1. */
  assumed: z.boolean(),
  /** Rises by one with each new calibration: a check keeps the number it used. */
  version: z.number().int().min(1),
  calibratedOn: plainDate.optional(),
  dueOn: plainDate.optional(),
  note: note.optional(),
  state,
});

/** An adapter as it is taken in today: nothing is known without any uncertainty at all. */
export const adapterTaken = adapter.extend({
  scaleUncertainty: z.number().positive("the uncertainty of the scale must be above 0").max(1),
});

/** Indication (net, newtons) to force, as a polynomial from the constant term up, with its own standard uncertainty. */
export const gaugeCurve = strict({
  version: z.number().int().min(1),
  proofId: id.optional(),
  coefficients: z.array(z.number()).min(2).max(7),
  fromN: z.number().min(0),
  toN: positiveN,
  /** Relative standard uncertainty (k = 1) at given net indications, linear between. */
  uncertainty: z.array(strict({ atN: z.number().min(0), relative: fraction })).max(40),
});

export const gauge = strict({
  gaugeId: id,
  name,
  serial: z.string().trim().max(80).optional(),
  capacityN: positiveN,
  resolutionN: positiveN.optional(),
  patternId: id.optional(),
  curve: gaugeCurve.optional(),
  provedOn: plainDate.optional(),
  dueOn: plainDate.optional(),
  /** How the PC knows it again when it is plugged in. */
  usb: strict({
    serialNumber: z.string().max(120).optional(),
    vendorId: z.string().max(8).optional(),
    productId: z.string().max(8).optional(),
  }).optional(),
  note: note.optional(),
  state,
});

/** A line pattern as `app/gauge/linePattern` checks it; the ledger keeps it as it stood. */
export const storedPattern = strict({ patternId: id, name, pattern: z.record(z.string(), z.json()) });

/** Only the id is chained; the name lives in a table that can be erased. */
export const operator = strict({
  operatorId: id,
  role: z.enum(roles),
  state,
});

export const serviceEvent = strict({
  eventId: id,
  spindleId: id,
  at: plainDate,
  kind: z.enum(["lubricated", "gripper", "springs", "unitExchanged", "setting", "taperGround", "crash", "other"]),
  parts: z.string().max(2_000).optional(),
  counter: z.number().int().min(0).optional(),
  newUnitSerial: z.string().trim().max(80).optional(),
  /** The next check becomes the baseline. */
  newBaseline: z.boolean(),
  note: note.optional(),
  operatorId: id.optional(),
});

export type Works = z.infer<typeof works>;
export type Spindle = z.infer<typeof spindle>;
export type Adapter = z.infer<typeof adapter>;
export type Gauge = z.infer<typeof gauge>;
export type StoredPattern = z.infer<typeof storedPattern>;
export type Operator = z.infer<typeof operator>;
export type ServiceEvent = z.infer<typeof serviceEvent>;
