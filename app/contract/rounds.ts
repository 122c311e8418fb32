import { z } from "zod";
import { id, name, note, plainDate, reasonText } from "../ledger/fields.ts";
import type { StoredDumpFormat } from "../ledger/round.ts";
import { forceUnits } from "../quantity/forceUnits.ts";
import type { WorksCalendar } from "../round/due/WorksCalendar.ts";
import { MOST_RECORDS } from "../round/dump/DumpReading.ts";
import { source } from "./linkViews.ts";
import { method, nothing } from "./method.ts";
import type { DockingResult, DockingView, DueView, MadeFile, RoundView } from "./roundViews.ts";
import type { Draft } from "./seriesViews.ts";

const language = z.enum(["en", "de"]);
const location = z.string().trim().min(1).max(20);
/** Of a round as it was seen; changed since, the act is refused. Absent: however it stands. */
const version = z.string().max(40);
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
  "rounds.getCalendar": method<WorksCalendar>()(nothing),
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
      version: version.optional(),
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
  "rounds.end": method<RoundView>()(
    z.strictObject({ roundId: id, version: version.optional(), state: z.enum(["done", "cancelled"]) }),
  ),
  /** Takes a round in hand: the series in work is tagged with its next stop, and each further one as well. Null puts it away. */
  "rounds.lead": method<Draft>()(z.strictObject({ roundId: id.nullable() })),
  /** Puts the stop off to come back to it, or leaves it out of the round; the next one is tagged. */
  "rounds.pass": method<Draft>()(
    z.strictObject({ roundId: id, spindleId: id, as: z.enum(["later", "leftOut"]), why: reasonText }),
  ),
  "rounds.sheet": method<MadeFile>()(
    z.strictObject({
      roundId: id,
      as: z.enum(["pdf", "csv"]),
      language,
      /** Absent: A4. */
      paper: z.enum(["A4", "Letter"]).optional(),
    }),
  ),
  "rounds.calendar": method<MadeFile>()(z.strictObject({ language })),
  "labels.print": method<MadeFile>()(
    z.strictObject({
      what: z.enum(["spindles", "adapters", "gauges"]),
      /** Absent: all in use. */
      ids: z.array(id).max(2_000).optional(),
      size: z.enum(["small", "medium", "large"]),
      /** Labels of a sheet that are used already. */
      skip: z.number().int().min(0).max(200).optional(),
      /** Absent: en. */
      language: language.optional(),
    }),
  ),

  "formats.list": method<readonly StoredDumpFormat[]>()(nothing),
  /** Keeps how the docking in work was read, under a name. */
  "formats.keep": method<StoredDumpFormat>()(z.strictObject({ dockingId: id, name })),
  /** Another name for a kept way of reading, or out of use: then it is offered no more, and can be put in use again. */
  "formats.save": method<StoredDumpFormat>()(
    z.strictObject({ formatId: id, name, state: z.enum(["inUse", "retired"]) }),
  ),

  /** Reads a memory or a file as text; with a docking's id it is read anew with other answers. */
  "docking.read": method<DockingView>()(
    z.strictObject({
      dockingId: id.optional(),
      text: z.string().max(4_000_000).optional(),
      fileName: z.string().max(260).optional(),
      /** Nothing of it was docked before, though without dates it looks so. */
      allNew: z.boolean().optional(),
      ...docked,
    }),
  ),
  /** Opens a port, asks the gauge for its memory, and reads what comes; asks again when lines were lost. */
  "docking.fetch": method<DockingView>()(
    z.strictObject({ source, request: z.string().min(1).max(40).optional(), ...docked }),
  ),
  /** Only in the demo: the simulated gauge comes back from a round with slips and is docked; `anew` sends it on another one. */
  "docking.demo": method<DockingView>()(z.strictObject({ anew: z.boolean().optional() })),
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
            takes: z.array(z.number().int().min(0)).min(1).max(MOST_RECORDS),
            factor: z.number().positive().max(1e6),
          }),
        )
        .max(5_000), // without a round every spindle of the works may have its readings
      /** Readings that are filed nowhere, and why. */
      leftOut: z
        .array(z.strictObject({ take: z.number().int().min(0), why: z.string().min(1).max(200) }))
        .max(MOST_RECORDS),
      /** What was asked and said, once for all that are alike; `count` where there were several. */
      answers: z
        .array(
          z.strictObject({
            code: z.string().max(40),
            answer: z.string().max(40),
            count: z.number().int().min(2).optional(),
          }),
        )
        .max(1_000),
      /** Reasons for going on in spite of a warning, by its code. */
      reasons: z.record(z.string().max(40), reasonText).optional(),
      operatorId: id.optional(),
      clockConfirmed: z.boolean().optional(),
    }),
  ),
} as const;
