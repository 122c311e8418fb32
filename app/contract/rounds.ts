import { z } from "zod";
import { id, name, note, plainDate, reasonText } from "../ledger/fields.ts";
import type { StoredDumpFormat } from "../ledger/round.ts";
import { forceUnits } from "../quantity/forceUnits.ts";
import type { WorksCalendar } from "../round/due/WorksCalendar.ts";
import { source } from "./linkViews.ts";
import { method, nothing } from "./method.ts";
import type { DockingResult, DockingView, DueView, MadeFile, RoundView } from "./roundViews.ts";

const language = z.enum(["en", "de"]);
const location = z.string().trim().min(1).max(20);
const field = z.enum(["number", "force", "unit", "time", "location", "ignored", "date", "stamp", "kind"]);

/** Answers to what a memory could not tell, and what the user says about its columns. */
const hints = z.strictObject({
  dateOrder: z.enum(["ymd", "dmy", "mdy"]).optional(),
  unit: z.enum(forceUnits).optional(),
  massMeansForce: z.boolean().optional(),
  columns: z.record(z.coerce.number().int().min(0).max(39), field).optional(),
});

const docked = {
  roundId: id.optional(),
  gaugeId: id.optional(),
  formatId: id.optional(),
  hints: hints.optional(),
  /** What the gauge's display shows as its time, where its memory does not say: ISO 8601 without a zone. */
  gaugeNow: z.iso.datetime({ local: true }).optional(),
};

/** Calls about due dates, rounds, and what comes back from them. */
export const rounds = {
  "rounds.due": method<DueView>()(nothing),
  "rounds.saveCalendar": method<WorksCalendar>()(
    z.strictObject({
      weekdays: z.array(z.number().int().min(1).max(7)).min(1, "the works must be open on some day").max(7),
      closed: z.array(z.strictObject({ from: plainDate, to: plainDate })).max(400),
    }),
  ),
  "rounds.list": method<readonly RoundView[]>()(nothing),
  "rounds.get": method<RoundView>()(z.strictObject({ roundId: id })),
  /** Without `asSet` the stops are ordered: fewest adapter changes, then the shortest walk. */
  "rounds.save": method<RoundView>()(
    z.strictObject({
      roundId: id.optional(),
      name,
      on: plainDate,
      gaugeId: id.optional(),
      operatorId: id.optional(),
      stops: z
        .array(z.strictObject({ spindleId: id, adapterId: id.optional(), location: location.optional() }))
        .min(1, "a round has at least one spindle")
        .max(500),
      made: z.enum(["dueList", "byHand"]),
      asSet: z.boolean().optional(),
      note: note.optional(),
    }),
  ),
  "rounds.end": method<RoundView>()(z.strictObject({ roundId: id, state: z.enum(["done", "cancelled"]) })),
  "rounds.sheet": method<MadeFile>()(z.strictObject({ roundId: id, as: z.enum(["pdf", "csv"]), language })),
  "rounds.calendar": method<MadeFile>()(z.strictObject({ language })),
  "labels.print": method<MadeFile>()(
    z.strictObject({
      what: z.enum(["spindles", "adapters", "gauges"]),
      /** Absent: all in use. */
      ids: z.array(id).max(2_000).optional(),
      size: z.enum(["small", "medium", "large"]),
      /** Labels of a sheet that are used already. */
      skip: z.number().int().min(0).max(200).optional(),
    }),
  ),

  "formats.list": method<readonly StoredDumpFormat[]>()(nothing),
  /** Keeps how the docking in work was read, under a name. */
  "formats.keep": method<StoredDumpFormat>()(z.strictObject({ dockingId: id, name })),

  /** Reads a memory or a file as text; with a docking's id it is read anew with other answers. */
  "docking.read": method<DockingView>()(
    z.strictObject({
      dockingId: id.optional(),
      text: z.string().max(4_000_000).optional(),
      fileName: z.string().max(260).optional(),
      ...docked,
    }),
  ),
  /** Opens a port, asks the gauge for its memory, and reads what comes; asks again when lines were lost. */
  "docking.fetch": method<DockingView>()(
    z.strictObject({ source, request: z.string().min(1).max(40).optional(), ...docked }),
  ),
  /** Values written on the sheet, typed in by spindle: "17.92 kN". */
  "docking.type": method<DockingView>()(
    z.strictObject({
      roundId: id,
      gaugeId: id.optional(),
      values: z.array(z.strictObject({ spindleId: id, texts: z.array(z.string().max(40)).max(20) })).max(500),
    }),
  ),
  /** Files what the page shows: checks, the docking itself and the round's state, in one transaction. */
  "docking.accept": method<DockingResult>()(
    z.strictObject({
      dockingId: id,
      filings: z
        .array(
          z.strictObject({
            spindleId: id,
            adapterId: id.nullable(),
            takes: z.array(z.number().int().min(0)).min(1).max(200),
            factor: z.number().positive().max(1e6),
          }),
        )
        .max(500),
      /** Readings that are filed nowhere, and why. */
      leftOut: z.array(z.strictObject({ take: z.number().int().min(0), why: z.string().min(1).max(200) })).max(10_000),
      answers: z.array(z.strictObject({ code: z.string().max(40), answer: z.string().max(40) })).max(1_000),
      /** Reasons for going on in spite of a warning, by its code. */
      reasons: z.record(z.string().max(40), reasonText).optional(),
      operatorId: id.optional(),
      clockConfirmed: z.boolean().optional(),
    }),
  ),
} as const;
