import type { ForceUnit } from "../../quantity/forceUnits.ts";
import type { DateOrder, DumpField, DumpFormat } from "./DumpFormat.ts";

/** Answers to what was asked before, and what the user says about columns. */
export type DumpHints = {
  readonly dateOrder?: DateOrder | undefined;
  readonly unit?: ForceUnit | undefined;
  readonly massMeansForce?: boolean | undefined;
  /** What a column holds, by its position; the rest is found. */
  readonly columns?: Readonly<Record<number, DumpField["field"]>> | undefined;
  readonly name?: string | undefined;
};

export type DumpQuestion = {
  readonly field: "dateOrder" | "unit" | "force";
  readonly question: string;
  readonly proposal?: string;
};

export type LearnedDump = {
  /** Undefined: nothing in it looks like records. */
  readonly format: DumpFormat | undefined;
  readonly undecided: readonly DumpQuestion[];
  /** Cells of the first record and the head over it, for a screen that lets the columns be named. */
  readonly columns: readonly {
    readonly head: string | undefined;
    readonly sample: string;
    readonly field: DumpField["field"];
  }[];
};
