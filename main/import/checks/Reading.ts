import type { ImportPreview } from "../../../app/contract/importViews.ts";
import type { Body } from "../../../app/ledger/kinds.ts";
import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";

/** A row of a file of checks, read: everything in it means something here. */
export type ReadRow = {
  readonly row: number;
  /** Undefined: the spindle `named` is to be made. */
  readonly spindleId: string | undefined;
  readonly named: string;
  readonly date: string;
  readonly atMs: number;
  readonly offsetMinutes: number;
  /** The mean of the takes where there are several. */
  readonly valueN: number;
  /** Each take's force where the row has several; empty where it has one. */
  readonly takesN: readonly number[];
  /** The figure with its unit, as it was written. */
  readonly text: string;
  readonly unit: ForceUnit;
  readonly adapterId: string | undefined;
  readonly gaugeId: string | undefined;
  readonly operatorId: string | undefined;
  readonly counter: number | undefined;
  readonly note: string;
  /** The row's cells, people's names left out: the ledger holds no names. */
  readonly raw: string;
};

/** A file of checks as read: what a page is shown, and the rows that would be filed; none where anything stands against it. */
export type ReadChecks = {
  readonly preview: ImportPreview;
  readonly rows: readonly ReadRow[];
  /** How it was read, for the record. */
  readonly reading: NonNullable<Body<"import">["reading"]>;
};
