import { z } from "zod";
import { checkReason } from "../ledger/check.ts";
import { id, note } from "../ledger/fields.ts";
import type { LearnView, LineView, LinkView, PortView } from "./linkViews.ts";
import { source } from "./linkViews.ts";
import { method, nothing } from "./method.ts";
import type { CheckRow } from "./recordViews.ts";
import type { Draft, ZeroView } from "./seriesViews.ts";

/** Answers to a learner's questions: the field asked about and what the user said. */
const answers = z.record(z.string().max(40), z.string().max(80));

/** Calls about the port, the gauge's lines and the series in work. */
export const measuring = {
  "ports.list": method<{ readonly ports: readonly PortView[]; readonly hint: string | undefined }>()(nothing),
  /** Listens through the settings of a port until lines decode. Answers at once; `job.finished` carries a `SerialSetting`. */
  "ports.find": method<{ readonly jobId: string }>()(z.strictObject({ path: z.string().min(1).max(260) })),

  "link.open": method<LinkView>()(
    z.strictObject({
      source,
      gaugeId: id.optional(),
      /** Absent: the gauge's own pattern, else learned from the first seconds. */
      patternId: id.optional(),
    }),
  ),
  "link.close": method<LinkView>()(nothing),
  /** Learns from what the open link has sent in the last seconds, or from a pasted sample. */
  "link.learn": method<LearnView>()(
    z.strictObject({ sample: z.string().max(100_000).optional(), answers: answers.optional() }),
  ),
  /** Takes a learned (and answered) pattern into use and keeps it under a name. */
  "link.usePattern": method<{ readonly patternId: string }>()(
    z.strictObject({
      name: z.string().trim().min(1).max(120),
      pattern: z.record(z.string(), z.json()),
      gaugeId: id.optional(),
    }),
  ),
  /** The last raw lines beside what was read of them. */
  "link.tail": method<{ readonly lines: readonly LineView[] }>()(nothing),

  /** Takes a steady second of rest as the zero; refused with the reason when the signal moves or is loaded. */
  "zero.take": method<ZeroView>()(nothing),

  "series.tag": method<Draft>()(
    z.strictObject({
      seriesId: id,
      spindleId: id.nullable().optional(),
      adapterId: id.nullable().optional(),
      gaugeId: id.nullable().optional(),
      operatorId: id.nullable().optional(),
    }),
  ),
  "series.describe": method<Draft>()(
    z.strictObject({
      seriesId: id,
      reason: checkReason.optional(),
      spindleWarm: z.boolean().nullable().optional(),
      temperatureC: z.number().min(-40).max(120).nullable().optional(),
      counter: z.number().int().min(0).nullable().optional(),
      note: note.optional(),
      workOrder: z.string().max(80).nullable().optional(),
    }),
  ),
  /** Leaves a cycle out, or takes it in again with `dropped: null`. */
  "series.drop": method<Draft>()(
    z.strictObject({ seriesId: id, cycleId: id, dropped: z.strictObject({ reason: z.string().max(500) }).nullable() }),
  ),
  /** Drops the last cycle that counts; the next one takes its place. */
  "series.takeAgain": method<Draft>()(z.strictObject({ seriesId: id })),
  /** Goes on in spite of a warning, with the reason. */
  "series.override": method<Draft>()(
    z.strictObject({
      seriesId: id,
      code: z.string().max(40),
      reason: z.string().trim().min(3, "a reason is needed").max(500),
    }),
  ),
  /** A value read off a display, with its unit: "17,92 kN". Null takes it back. */
  "series.type": method<Draft>()(z.strictObject({ seriesId: id, text: z.string().max(40).nullable() })),
  "series.clear": method<Draft>()(z.strictObject({ seriesId: id })),
  /** Files the series. Called twice for the same series it answers the check already filed. */
  "series.accept": method<{ readonly row: CheckRow; readonly again: boolean; readonly draft: Draft }>()(
    z.strictObject({
      seriesId: id,
      /** The spindle the page showed when the button was pressed: refused when the tag has changed since. */
      spindleId: id,
      /** Said yes to a clock that stands before the last entry. */
      clockConfirmed: z.boolean().optional(),
    }),
  ),

  /** Drives the simulated gauge. */
  "simulated.command": method<{ readonly done: true }>()(
    z.strictObject({
      command: z.enum([
        "clamp",
        "release",
        "dry",
        "grease",
        "breakSpring",
        "newSprings",
        "spike",
        "overload",
        "unplug",
        "plug",
        "knock",
        "load",
        "unload",
      ]),
      forceN: z.number().positive().max(1e6).optional(),
    }),
  ),
} as const;
