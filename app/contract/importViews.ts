import { z } from "zod";
import { id, unit } from "../ledger/fields.ts";
import type { ForceUnit } from "../quantity/forceUnits.ts";

/** Lists and old checks from a spreadsheet: what a page sends, and what it sees before anything is filed. */

export const importedKind = z.enum(["spindles", "adapters", "gauges", "checks"]);
export type ImportedKind = z.infer<typeof importedKind>;
/** What goes into the register; checks go into the histories. */
export type ListKind = Exclude<ImportedKind, "checks">;

/** What a name in a file of checks can stand for. */
export const namedThing = z.enum(["spindle", "adapter", "gauge", "operator"]);
export type NamedThing = z.infer<typeof namedThing>;

/** What is to be done with a name that the register does not know. */
const nameAnswer = z.strictObject({
  thing: namedThing,
  name: z.string().min(1).max(200),
  /** An id of the register; `create` is for spindles alone. `leaveOut`: a spindle's rows, or the tool's name. */
  to: z.union([z.enum(["create", "leaveOut"]), id]),
});
export type NameAnswer = z.infer<typeof nameAnswer>;

/** A file as it was chosen, with what the user has said about it so far. */
export const listFile = z.strictObject({
  what: importedKind,
  fileName: z.string().max(260),
  /** The file's bytes. */
  base64: z.base64().max(20_000_000, "this file is too large: 15 MB at most"),
  /** Which field each column is, null for one that is left out; absent: proposed from the head. */
  mapping: z.array(z.string().max(40).nullable()).max(200).optional(),
  /** The unit of forces in columns whose head names none. */
  unit: unit.optional(),
  /** Rows whose name is in the register already are passed over instead of refused. */
  passOverKnown: z.boolean().optional(),
  /** Which sheet of a workbook, by its name. */
  sheet: z.string().max(120).optional(),
  /** How 03/04/2026 is to be read, where the file itself does not tell. */
  dateOrder: z.enum(["dayFirst", "monthFirst"]).optional(),
  names: z.array(nameAnswer).max(5_000).optional(),
});
export type ListFile = z.infer<typeof listFile>;

export type ImportProblem = {
  /** As a spreadsheet numbers it, the head is row 1; undefined: the file as a whole. */
  readonly row: number | undefined;
  /** The column's name in the head. */
  readonly column: string | undefined;
  readonly code:
    | "unreadable" // the file is no table
    | "cells" // more or fewer cells than the head
    | "fieldTwice"
    | "fieldMissing"
    | "valueBesideTakes" // a column for the force beside columns for its takes
    | "unitWanted"
    | "torque"
    | "mass"
    | "noForce"
    | "noNumber"
    | "noDate"
    | "mixedMarks" // decimal comma and decimal point in one file
    | "needed"
    | "twinInFile"
    | "twinInRegister"
    | "limits"
    | "range"
    | "taperUnknown"
    | "sheetWanted"
    | "hiddenSheets"
    | "merged" // cells joined over several rows
    | "mergedValue"
    | "dateOrderWanted"
    | "future"
    | "tooOld"
    | "spindleUnknown"
    | "toolUnknown" // adapter, gauge or operator
    | "sameFile" // a file of the very same bytes was imported before
    | "alreadyThere"
    | "baselineMoves"
    | "farOff";
  /** The cell, the other row, the field: what it is about. */
  readonly about: string;
  /** In plain words. */
  readonly message: string;
  /** `stops`: nothing can be imported before it is settled. `tell`: said, no more. */
  readonly weight: "stops" | "tell";
};

export type ImportColumn = {
  readonly name: string;
  /** The field it is taken for; undefined: left out. */
  readonly field: string | undefined;
  /** The unit of force its head names. */
  readonly unit: string | undefined;
  /** The first cells that hold something. */
  readonly examples: readonly string[];
};

/** A name in a file of checks that the register does not know, and what has been said about it. */
export type UnknownName = {
  readonly thing: NamedThing;
  readonly name: string;
  readonly rows: number;
  readonly to: NameAnswer["to"] | undefined;
};

/** Rows whose force is the mean of several takes, and the first of them as an example, its figures in `unit`. */
export type TakesPreview = {
  readonly rows: number;
  readonly example: {
    readonly row: number;
    readonly takes: readonly number[];
    readonly mean: number;
    readonly unit: ForceUnit;
    readonly decimals: number;
  };
};

/** The sheets of a workbook that can be seen and hold something, and the one that is read. */
export type Book = { readonly sheets: readonly string[]; readonly sheet: string | undefined };

export type ImportPreview = {
  /** Undefined: the file is text. */
  readonly book: Book | undefined;
  readonly encoding: "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";
  readonly separator: "," | ";" | "\t";
  readonly columns: readonly ImportColumn[];
  /** What columns can be taken for; `many`: several of them for the same. */
  readonly fields: readonly {
    readonly field: string;
    readonly needed: boolean;
    readonly force: boolean;
    readonly many: boolean;
  }[];
  readonly rowCount: number;
  /** Rows that would be imported as things stand. */
  readonly ready: number;
  readonly passedOver: number;
  /** The first ones; `problemCount` says how many there are. */
  readonly problems: readonly ImportProblem[];
  readonly problemCount: number;
  /** Whether anything stands against importing. */
  readonly stopped: boolean;
  /** How dates with the month in doubt are read; undefined where none is in doubt, or it has not been said. */
  readonly dateOrder: ListFile["dateOrder"];
  /** The unit of forces where head and cell name none, said now or at the last import of such a file. */
  readonly unit: ListFile["unit"];
  /** Of checks: names the register does not know, spindles first, the first ones of them. */
  readonly names: readonly UnknownName[];
  /** Of checks: what becomes of rows that hold several takes; undefined where no row does. */
  readonly takes: TakesPreview | undefined;
};

/** What `register.import` finishes with. */
export type Imported = {
  /** Undefined: every check of the file was there already, and nothing was filed. */
  readonly importId: string | undefined;
  readonly imported: number;
  readonly passedOver: number;
};
