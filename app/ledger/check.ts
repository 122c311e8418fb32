import { z } from "zod";
import { fraction, id, instant, note, offsetMinutes, reasonText, strict, unit } from "./fields.ts";
import { decisionRule, gaugeCurve, limits } from "./register.ts";

/** A check keeps everything that led to its verdict, as it stood on that day. `null` where a thing does not exist. */

const nullable = z.number().nullable();

export const cycleFlag = z.enum(["overload", "unstable", "spike", "notReleased", "peakHold", "short", "coarse", "cut"]);

/** A cycle as the detector gave it; names as in `app/cycle/Cycle.ts`. */
export const filedCycle = strict({
  cycleId: id,
  startIndex: z.number().int(),
  endIndex: z.number().int(),
  startS: nullable,
  endS: nullable,
  peakN: z.number(),
  peakIndex: z.number().int(),
  settledN: nullable,
  settledUncertaintyN: nullable,
  settledWindow: strict({
    fromIndex: z.number(),
    toIndex: z.number(),
    n: z.number(),
    effectiveN: z.number(),
  }).nullable(),
  overshoot: nullable,
  riseTimeS: nullable,
  noiseN: nullable,
  slopeNPerS: nullable,
  creep: nullable,
  zeroBeforeN: nullable,
  zeroAfterN: nullable,
  zeroN: z.number(),
  flags: z.array(cycleFlag),
  /** Left out of the series by the user, and why; null when it counts. */
  dropped: strict({ reason: z.string().max(500) }).nullable(),
  /** SHA-256 of the waveform's bytes in the waveform table; null when none was kept. */
  waveformHash: z
    .string()
    .regex(/^[0-9a-f]{64}$/)
    .nullable(),
});

export const contribution = strict({
  source: z.enum([
    "repeatability",
    "holdNoise",
    "resolution",
    "zero",
    "gaugeProof",
    "adapter",
    "temperature",
    "drift",
    "misalignment",
  ]),
  type: z.enum(["A", "B"]),
  distribution: z.enum(["normal", "rectangular", "triangular", "t"]),
  standardN: z.number().min(0),
  degreesOfFreedom: nullable,
  assumed: z.boolean(),
});

export const budget = strict({
  contributions: z.array(contribution),
  standardN: z.number(),
  degreesOfFreedom: nullable,
  coverageFactor: z.number(),
  coverage: fraction,
  expandedN: z.number(),
  dominant: contribution.shape.source,
});

/** Why, as data; the words are `reasonSentence`'s or the screen's. */
export const reason = strict({
  code: z.string().max(40),
  valueN: z.number().optional(),
  expandedN: z.number().optional(),
  limitN: z.number().optional(),
  otherN: z.number().optional(),
  share: z.number().optional(),
  probability: z.number().optional(),
});

export const verdict = z.enum(["good", "watch", "act", "stop", "cannotTell"]);
export const checkReason = z.enum([
  "routine",
  "baseline",
  "beforeService",
  "afterService",
  "afterCrash",
  "complaint",
  "other",
]);

/** Something said beside the verdict or before the series: a code, its figure or name, and the user's reason where one was asked. */
export const remark = strict({
  code: z.string().max(40),
  about: z.string().max(200).optional(),
  overriddenWith: z.string().max(500).optional(),
});

export const check = strict({
  checkId: id,
  spindleId: id,
  adapterId: id.nullable(),
  gaugeId: id.nullable(),
  operatorId: id.nullable(),
  measuredAt: instant,
  offsetMinutes,
  source: z.enum(["measured", "typed", "docked", "imported"]),
  reason: checkReason,
  spindleWarm: z.boolean().nullable(),
  temperatureC: z.number().min(-40).max(120).nullable(),
  counter: z.number().int().min(0).nullable(),
  note: note.nullable(),
  unit,
  /** The raw line or typed text that carried the value, where one line did. */
  rawLine: z.string().max(500).nullable(),
  rateHz: nullable,
  patternId: id.nullable(),
  pattern: z.record(z.string(), z.json()).nullable(),
  cycles: z.array(filedCycle).max(500),
  series: strict({
    n: z.number().int().min(0),
    /** Whether settled forces or held peaks were averaged; `typed` for a value without a stream. */
    basis: z.enum(["settled", "peak", "typed"]),
    meanN: nullable,
    sN: nullable,
    rangeN: nullable,
    outliers: z.array(z.number().int().min(1)),
  }),
  corrections: strict({
    curve: gaugeCurve.nullable(),
    adapterScale: z.number(),
    adapterVersion: z.number().int().nullable(),
  }),
  /** The corrected force the verdict is about; null when there was none. */
  valueN: nullable,
  budget: budget.nullable(),
  limits,
  rule: decisionRule,
  cautionDrop: fraction,
  actDrop: fraction,
  baseline: strict({
    checkId: id,
    valueN: z.number(),
    standardUncertaintyN: z.number(),
    correlation: z.number(),
  }).nullable(),
  previous: strict({
    checkId: id,
    valueN: z.number(),
    standardUncertaintyN: z.number(),
    correlation: z.number(),
  }).nullable(),
  verdict,
  conformity: z.enum(["conforming", "nonConforming", "undecided"]),
  zone: z.enum(["pass", "conditionalPass", "conditionalFail", "fail"]).nullable(),
  probabilityConforming: nullable,
  dropFromBaseline: nullable,
  dropFromPrevious: nullable,
  reasons: z.array(reason),
  weakenedBy: z.array(remark),
  /** What was warned of before the series. */
  warnings: z.array(remark),
  /** The gauge's link was lost at these times from the stream's start, seconds. */
  gapsS: z.array(z.number()),
  programVersion: z.string().max(40),
  /** The clock stood before the last entry and the user said go on. */
  clockDoubtful: z.boolean(),
  roundId: id.nullable(),
  workOrder: z.string().max(80).nullable(),
  /** Which file an imported check came from, and its row there. */
  imported: strict({
    importId: id,
    fileHash: z.string().regex(/^[0-9a-f]{64}$/),
    row: z.number().int().min(1),
    /** Newtons, in the order of the columns, where the row held several takes; the check's value is their mean. */
    takesN: z.array(z.number()).max(200).optional(),
  }).optional(),
});

export const voiding = strict({ checkId: id, reason: reasonText, operatorId: id.nullable() });
export const replacement = strict({ checkId: id, by: check, reason: reasonText, operatorId: id.nullable() });
export const stopRelease = strict({
  spindleId: id,
  checkId: id,
  reason: reasonText,
  operatorId: id,
  workOrder: z.string().max(80).nullable(),
});
export const baselineChoice = strict({
  spindleId: id,
  checkId: id,
  reason: reasonText,
  operatorId: id.nullable(),
});
export const remeasureMark = strict({
  checkIds: z.array(id).max(10_000),
  reason: reasonText,
  operatorId: id.nullable(),
});

export type FiledCycle = z.infer<typeof filedCycle>;
export type Check = z.infer<typeof check>;
export type Remark = z.infer<typeof remark>;
export type CheckReason = z.infer<typeof checkReason>;
