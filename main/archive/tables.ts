import { type Check, filedCycle } from "../../app/ledger/check.ts";
import { type Kind, kinds } from "../../app/ledger/kinds.ts";
import { csvLine } from "../../app/words/csvCell.ts";
import type { FiledEntry } from "../store/Store.ts";
import { type Column, columnsOf, valueAt } from "./columnsOf.ts";

/** One CSV file of an archive. */
export type Table = { readonly file: string; readonly about: string; readonly columns: readonly Column[] };

const named = (name: string, datatype: Column["datatype"]): Column => ({ name, datatype, path: [name] });

/** What stands in front of every record: where its entry is in the ledger. */
const ENTRY: readonly Column[] = [
  named("origin", "string"),
  named("seq", "integer"),
  { name: "entryId", datatype: "string", path: ["id"] },
  { name: "filedAt", datatype: "dateTime", path: ["at"] },
  { name: "filedOffsetMinutes", datatype: "integer", path: ["offsetMinutes"] },
  named("hash", "string"),
];

const names = Object.keys(kinds) as Kind[]; // an object literal's own keys

/** A table for every kind, one for the cycles of all checks, and one for their readings. */
const bodyColumns = new Map(
  names.map((kind): [Kind, Column[]] => [
    kind,
    kind === "replacement"
      ? [
          ...columnsOf(kinds.replacement, ["by"]),
          { name: "byCheckId", datatype: "string", path: ["by", "checkId"] } as const,
        ]
      : columnsOf(kinds[kind], kind === "check" ? ["cycles"] : []),
  ]),
);
const cycleColumns = columnsOf(filedCycle);

export const kindTables = new Map(
  names.map((kind): [Kind, Table] => [
    kind,
    { file: `csv/${kind}.csv`, about: aboutKind(kind), columns: [...ENTRY, ...bodyColumns.get(kind)!] },
  ]),
);
export const cycleTable: Table = {
  file: "csv/cycle.csv",
  about: "Cycles of all checks, one a row; cycle counts from 1 within its check.",
  columns: [
    named("origin", "string"),
    named("seq", "integer"),
    named("checkId", "string"),
    named("cycle", "integer"),
    ...cycleColumns,
  ],
};
export const waveformTable: Table = {
  file: "csv/waveform.csv",
  about:
    "Readings of all cycles that kept them, one cycle a row: indications in newtons as they came, NaN where a line was rejected. " +
    "Times in seconds from the stream's first line: startS and stepS where they are even, timesS where each has its own.",
  columns: [
    named("checkId", "string"),
    named("cycleId", "string"),
    named("fromIndex", "integer"),
    named("startS", "double"),
    named("stepS", "double"),
    named("timesS", "double"),
    named("forceN", "double"),
  ],
};
/** Columns whose cell is a list with blanks between. */
export const LISTS: ReadonlySet<string> = new Set(["timesS", "forceN"]);

export const allTables: readonly Table[] = [...kindTables.values(), cycleTable, waveformTable];

/** The record of an entry as lines of its table; a replacement is one of its own and one among the checks. */
export function kindLine(kind: Kind, entry: FiledEntry, body: unknown): string {
  const cells: unknown[] = ENTRY.map(({ path }) => valueAt(entry, path));
  for (const { path } of bodyColumns.get(kind)!) cells.push(valueAt(body, path));
  return csvLine(cells);
}

export function cycleLines({ origin, seq }: FiledEntry, check: Check): string {
  let lines = "";
  for (const [i, cycle] of check.cycles.entries()) {
    const cells: unknown[] = [origin, seq, check.checkId, i + 1];
    for (const { path } of cycleColumns) cells.push(valueAt(cycle, path));
    lines += csvLine(cells);
  }
  return lines;
}

export const headerLine = ({ columns }: Table): string => csvLine(columns.map(({ name }) => name));

function aboutKind(kind: Kind): string {
  if (kind === "check")
    return "Checks, one a row, those that came as a replacement too; their cycles are in cycle.csv.";
  if (kind === "operator") return "Operators by id; names are kept outside the ledger and are not exported.";
  return `Entries of the kind ${kind}, one a row, in the order in which they were filed. A later row with the same id replaces an earlier one.`;
}
