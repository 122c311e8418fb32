import { z } from "zod";
import { unit } from "../ledger/fields.ts";

/** Lists from a spreadsheet: what a page sends, and what it sees before anything is filed. */

export const importedKind = z.enum(["spindles", "adapters", "gauges"]);
export type ImportedKind = z.infer<typeof importedKind>;

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
    | "taperUnknown";
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

export type ImportPreview = {
  readonly encoding: "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";
  readonly separator: "," | ";" | "\t";
  readonly columns: readonly ImportColumn[];
  /** What columns can be taken for. */
  readonly fields: readonly { readonly field: string; readonly needed: boolean; readonly force: boolean }[];
  readonly rowCount: number;
  /** Rows that would be imported as things stand. */
  readonly ready: number;
  readonly passedOver: number;
  /** The first ones; `problemCount` says how many there are. */
  readonly problems: readonly ImportProblem[];
  readonly problemCount: number;
  /** Whether anything stands against importing. */
  readonly stopped: boolean;
};

/** What `register.import` finishes with. */
export type Imported = { readonly importId: string; readonly imported: number; readonly passedOver: number };
