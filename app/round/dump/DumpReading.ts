import type { ForceUnit } from "../../quantity/forceUnits.ts";

/** One record of a memory as it was read. */
export type DumpRecord = {
  /** Line of the dump, from 1. */
  readonly line: number;
  readonly raw: string;
  readonly number: string | undefined;
  /** Figure and unit as written: with the stamp what tells the record from others. */
  readonly figure: string;
  readonly valueN: number | undefined;
  readonly unit: ForceUnit | undefined;
  readonly refused: "torque" | "overload" | "unreadable" | undefined;
  /** Date and time as written. */
  readonly stamp: string | undefined;
  /** The same by the gauge's clock, ms as if that were UTC; undefined: none, or no date of the calendar. */
  readonly gaugeMs: number | undefined;
  readonly badDate: boolean;
  readonly location: string | undefined;
  readonly kind: "held" | "live" | undefined;
};

export type DumpReading = {
  readonly records: readonly DumpRecord[];
  /** Lines that look like records and cannot be trusted. */
  readonly rejected: readonly { readonly line: number; readonly raw: string; readonly why: "checksum" | "fields" }[];
  /** Lines that are something else: heads, live readings, closing lines. */
  readonly passedOver: number;
  /** How many records the gauge says it has; undefined: it does not say. */
  readonly announced: number | undefined;
  /** What the gauge's clock showed while it sent. */
  readonly gaugeNowMs: number | undefined;
  /** Records were lost: fewer came than announced, a line was damaged, or the last one was cut. */
  readonly incomplete: boolean;
  /** More records than are read: the rest was left. */
  readonly tooMany: boolean;
};

/** More than any gauge's memory holds. */
export const MOST_RECORDS = 10_000;
