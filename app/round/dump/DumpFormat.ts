import type { ChecksumMethod } from "../../gauge/checksums.ts";
import type { ForceUnit } from "../../quantity/forceUnits.ts";

/** In which order a date has year, month and day. */
export type DateOrder = "ymd" | "dmy" | "mdy";

/** What a cell of a record holds. `stamp` is date and time in one cell; `force` is the figure, with its unit behind it or not. */
export type DumpField =
  | { readonly field: "number" | "force" | "unit" | "time" | "location" | "ignored" }
  | { readonly field: "date" | "stamp"; readonly order: DateOrder }
  /** What was stored, by the words that say so. */
  | { readonly field: "kind"; readonly words: Readonly<Record<string, "held" | "live" | "other">> };

/**
 * How one gauge writes its memory, or one program its file: data that is stored, named and exported. A record is one line
 * of cells, or a block of labelled lines; lines that are none (a head, live readings between, a closing line) are passed
 * over.
 */
export type DumpFormat = {
  readonly version: 1;
  readonly name: string;
  /**
   * Between cells; `blank`: any run of blanks; `lines`: a record is a block of lines that ends
   * with an empty one. Cells may stand in quotes (RFC 4180) where it is a mark.
   */
  readonly separator: ";" | "," | "\t" | "blank" | "|" | "lines";
  readonly fields: readonly DumpField[];
  /** With `lines`: the words a line of each field may begin with; none: it begins with its figures. */
  readonly labels?: readonly (readonly string[])[] | undefined;
  /** The unit of figures that come without one. */
  readonly unit?: ForceUnit | undefined;
  /** The user has said that kg, lb and the like mean a force on this gauge. */
  readonly massMeansForce?: boolean | undefined;
  /** Two hexadecimal digits behind this mark at the end of each line, over everything before it. */
  readonly checksum?: { readonly method: ChecksumMethod; readonly mark: string } | undefined;
  /** Begin lines that say how many records there are. */
  readonly countAfter?: readonly string[] | undefined;
  /** Begins the line that says what the gauge's clock shows now, and the order of that date. */
  readonly clockAfter?: { readonly text: string; readonly order: DateOrder } | undefined;
  /** What asks the gauge for its memory, control characters as they are. */
  readonly request?: string | undefined;
};
