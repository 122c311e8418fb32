import { z } from "zod";
import { forceUnits } from "../quantity/forceUnits.ts";
import type { DumpFormat } from "../round/dump/DumpFormat.ts";
import { id, instant, name, note, plainDate, reasonText, strict, unit } from "./fields.ts";

/** Rounds, what came back from them, and how memories are read. */

const location = z.string().trim().min(1).max(20);

/** Spindles to visit, in the order to walk. A later entry with the same id replaces the earlier one whole. */
export const round = strict({
  roundId: id,
  name,
  /** The day it is to be walked. */
  on: plainDate,
  gaugeId: id.nullable(),
  operatorId: id.nullable(),
  stops: z
    .array(
      strict({
        spindleId: id,
        adapterId: id.nullable(),
        /** The number under which the gauge keeps its readings. */
        location: location.nullable(),
        /** What it was expected to show when the round was made. */
        expectedN: z.number().positive().nullable(),
        /** Put off to come back to, or left out of the round, and why. */
        passed: strict({ as: z.enum(["later", "leftOut"]), why: reasonText, at: instant }).optional(),
      }),
    )
    .min(1)
    .max(500),
  made: z.enum(["dueList", "byHand"]),
  /** How its order was found: weighed out, improved, or as the user set it. */
  found: z.enum(["exact", "good", "asSet"]),
  adapterChanges: z.number().int().min(0),
  walk: z.number().min(0),
  note: note.nullable(),
  state: z.enum(["open", "done", "cancelled"]),
});

/** One reading that came out of a memory, filed with a check or left out, and why. */
const dockedRecord = strict({
  number: z.string().max(20).nullable(),
  raw: z.string().max(500),
  /** Figure and unit as written. */
  figure: z.string().max(80),
  valueN: z.number().nullable(),
  unit: unit.nullable(),
  /** Date and time as written, and as corrected. */
  stamp: z.string().max(60).nullable(),
  at: instant.nullable(),
  location: z.string().max(80).nullable(),
  kind: z.enum(["held", "live"]).nullable(),
  checkId: id.nullable(),
  /** What its force was multiplied with after a question; 1 as it stands. */
  factor: z.number().positive(),
  /** Why it was filed nowhere; null when it was. */
  leftOut: z.string().max(200).nullable(),
});

/** A memory, a file or a sheet as it was docked, every reading of it: what is docked again is known by it. */
export const docking = strict({
  dockingId: id,
  roundId: id.nullable(),
  gaugeId: id.nullable(),
  operatorId: id.nullable(),
  formatId: id.nullable(),
  source: z.enum(["port", "file", "sheet"]),
  fileName: z.string().max(260).nullable(),
  /** Both clocks as they stood while docked; null when the gauge's was not known. */
  clock: strict({
    gaugeMs: z.number().int(),
    pcMs: z.number().int(),
    driftPpm: z.number().nullable(),
    setSince: z.boolean(),
  }).nullable(),
  records: z.array(dockedRecord).max(10_000),
  /** Questions that stood when it was accepted, and what was done: those alike once, `count` of them. */
  answers: z
    .array(strict({ code: z.string().max(40), answer: z.string().max(40), count: z.number().int().min(2).optional() }))
    .max(1_000),
});

const order = z.enum(["ymd", "dmy", "mdy"]);
const field = z.discriminatedUnion("field", [
  strict({ field: z.enum(["number", "force", "unit", "time", "location", "ignored"]) }),
  strict({ field: z.enum(["date", "stamp"]), order }),
  strict({
    field: z.literal("kind"),
    words: z.record(z.string().max(24), z.enum(["held", "live", "other"])),
  }),
]);
const begin = z.string().min(1).max(40);

/** How one gauge writes its memory, or one program its file. */
export const dumpFormatSchema = strict({
  version: z.literal(1),
  name: z.string().max(80),
  separator: z.enum([";", ",", "\t", "blank", "|", "lines"]),
  fields: z.array(field).min(1).max(40),
  labels: z
    .array(z.array(z.string().max(40)).max(20))
    .max(40)
    .optional(),
  unit: z.enum(forceUnits).optional(),
  massMeansForce: z.boolean().optional(),
  checksum: strict({
    method: z.enum(["xor", "sum256", "negativeSum256", "digitSum10", "byteSum10", "luhn10", "weight31"]),
    mark: z.string().length(1),
  }).optional(),
  countAfter: z.array(begin).max(10).optional(),
  clockAfter: strict({ text: begin, order }).optional(),
  request: z.string().min(1).max(40).optional(),
}) satisfies z.ZodType<DumpFormat>;

/** A dump format under a name; the ledger keeps it as it stood. A later entry with the same id replaces the earlier one whole. */
export const storedDumpFormat = strict({
  formatId: id,
  name,
  format: dumpFormatSchema,
  /** Absent: in use. */
  state: z.enum(["inUse", "retired"]).optional(),
});

export type Round = z.infer<typeof round>;
export type Docking = z.infer<typeof docking>;
export type StoredDumpFormat = z.infer<typeof storedDumpFormat>;
