import type { ForceUnit } from "../../app/quantity/forceUnits.ts";
import { parseDecimal, parseForce } from "../../app/quantity/parseForce.ts";
import { parseForceUnit } from "../../app/quantity/parseForceUnit.ts";
import { UsageError } from "./Command.ts";
import { parseIsoInstant } from "./parseIsoInstant.ts";
import { type CsvRow, type CsvTable, readCsv } from "./readCsv.ts";

const DAY_MS = 86_400_000;

export type TrendColumns = {
  readonly x?: string | undefined;
  readonly value?: string | undefined;
  readonly events?: string | undefined;
};

/** A history out of a table, in the order of x. */
export type TrendFile = {
  readonly xColumn: string | undefined;
  /** `date`: x is days since `originMs`; `days`: numbers of a column named for days; `row`: no column, rows counted from 1. */
  readonly xKind: "date" | "days" | "number" | "row";
  readonly originMs: number | undefined;
  readonly valueColumn: string;
  readonly unit: ForceUnit;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Positions, from 0, at which a new segment starts. */
  readonly starts: readonly number[];
};

/**
 * Reads the columns of a history. Without `x`: the first column of ISO 8601 dates, else one named x, date, time, day
 * or the like, else the first column of numbers where there are two, else the rows are counted. Without `value`: the first
 * column of numbers that is neither x nor events. A row without a value only says, by its events cell, that the next
 * one starts a segment. Nothing is guessed in a column once chosen.
 * @throws UsageError  a column that is not there, a unit that is no force, a cell that cannot be read (by row and column)
 */
export function readTrendCsv(bytes: Uint8Array, file: string, wanted: TrendColumns): TrendFile {
  const table = readCsv(bytes, file);
  if (table.rows.length === 0) throw new UsageError(`${file}: has a head and no rows; each row is one check`);
  const events = wanted.events === undefined ? undefined : placeOf(table, wanted.events, file);
  const taken = [events, wanted.value === undefined ? undefined : placeOf(table, wanted.value, file)];
  const xPlace = wanted.x === undefined ? guessX(table, taken) : placeOf(table, wanted.x, file);
  const valuePlace = wanted.value === undefined ? guessValue(table, [xPlace, events], file) : taken[1]!;
  const valueColumn = table.columns[valuePlace]!;
  const unit = unitOf(valueColumn, file);
  const rows = inOrder(table, { x: xPlace, value: valuePlace, events }, file);
  const xColumn = xPlace === undefined ? undefined : table.columns[xPlace]!;
  const isDate = xPlace !== undefined && parseIsoInstant(table.rows[0]!.cells[xPlace]!) !== undefined;
  const kept = rows.filter((row) => row.value !== undefined);
  if (kept.length === 0) throw new UsageError(`${file}: the column "${valueColumn}" holds no value`);
  const originMs = isDate ? kept[0]!.x : undefined;
  return {
    xColumn,
    xKind: isDate ? "date" : xColumn === undefined ? "row" : /days?/i.test(xColumn) ? "days" : "number",
    originMs,
    valueColumn,
    unit,
    x: Float64Array.from(kept, (row) => (originMs === undefined ? row.x : (row.x - originMs) / DAY_MS)),
    y: Float64Array.from(kept, (row) => row.value!), // filtered above
    starts: startsOf(rows),
  };
}

function placeOf({ columns }: CsvTable, name: string, file: string): number {
  const exact = columns.indexOf(name);
  if (exact >= 0) return exact;
  const alike = columns.flatMap((c, i) => (c.toLowerCase() === name.toLowerCase() ? [i] : []));
  if (alike.length === 1) return alike[0]!;
  throw new UsageError(`${file}: has no column "${name}"; the columns are ${columns.join(", ")}`);
}

const isNumber = (cell: string) => parseDecimal(cell) !== undefined;
const isInstant = (cell: string) => parseIsoInstant(cell) !== undefined;

/** By the first cell that is not empty. */
function holds({ rows }: CsvTable, place: number, test: (cell: string) => boolean): boolean {
  const first = rows.find((row) => row.cells[place]!.trim() !== "");
  return first !== undefined && test(first.cells[place]!);
}

function guessX(table: CsvTable, not: readonly (number | undefined)[]): number | undefined {
  const open = table.columns.map((_, i) => i).filter((i) => !not.includes(i));
  const dated = open.find((i) => holds(table, i, isInstant));
  if (dated !== undefined) return dated;
  const numbers = open.filter((i) => holds(table, i, isNumber));
  const named = open.find((i) =>
    /^(x|t|date|time|days?|elapsed.*|year|counter|count|cycles)$/i.test(table.columns[i]!),
  );
  if (named !== undefined) return named;
  const both = numbers.length + (not[1] === undefined ? 0 : 1);
  return both >= 2 ? numbers[0] : undefined;
}

function guessValue(table: CsvTable, not: readonly (number | undefined)[], file: string): number {
  const found = table.columns.findIndex((_, i) => !not.includes(i) && holds(table, i, isNumber));
  if (found < 0) throw new UsageError(`${file}: has no column of numbers to look at; name it with --value COLUMN`);
  return found;
}

function unitOf(column: string, file: string): ForceUnit {
  const suffix = /_([^_]+)$/.exec(column)?.[1];
  if (suffix === undefined) return "N";
  const meaning = parseForceUnit(suffix);
  if (meaning.kind === "torque") throw new UsageError(`${file}: column "${column}": ${meaning.reason}`);
  if (meaning.kind === "mass") {
    throw new UsageError(
      `${file}: column "${column}": ${suffix} is a mass; name it ${column.slice(0, -suffix.length)}${meaning.unit} where a force is meant`,
    );
  }
  return meaning.kind === "force" ? meaning.unit : "N"; // "group_mean": no unit after all
}

type Places = { readonly x: number | undefined; readonly value: number; readonly events: number | undefined };
type Row = { readonly x: number; readonly value: number | undefined; readonly event: boolean };

function inOrder(table: CsvTable, places: Places, file: string): Row[] {
  const dated = places.x !== undefined && isInstant(table.rows[0]!.cells[places.x]!);
  const rows = table.rows.map((row, i) => {
    const event = places.events !== undefined && row.cells[places.events]!.trim() !== "";
    const value = valueIn(row, places.value, event, table, file);
    return { x: places.x === undefined ? i + 1 : xIn(row, places.x, dated, table, file), value, event };
  });
  return rows.sort((a, b) => a.x - b.x); // stable: equal x keep their order
}

function xIn(row: CsvRow, place: number, dated: boolean, table: CsvTable, file: string): number {
  const cell = row.cells[place]!.trim();
  const x = dated ? parseIsoInstant(cell) : parseDecimal(cell);
  if (x !== undefined) return x;
  const wanted = dated ? "an ISO 8601 date such as 2031-04-30" : "a number, nor is the column one of ISO 8601 dates";
  throw fault(row, place, table, file, cell === "" ? "is empty; each row needs its x" : `"${cell}" is not ${wanted}`);
}

function valueIn(row: CsvRow, place: number, event: boolean, table: CsvTable, file: string): number | undefined {
  const cell = row.cells[place]!.trim();
  if (cell === "" && event) return undefined;
  if (cell === "") throw fault(row, place, table, file, "is empty; give the value or leave the row out");
  const value = parseDecimal(cell);
  if (value !== undefined) return value;
  const kind = parseForce(cell).kind;
  const words =
    kind === "force" || kind === "mass" || kind === "torque"
      ? `"${cell}" carries a unit; bring all rows to one unit, which stands in the head as in force_kN`
      : `"${cell}" is not a number`;
  throw fault(row, place, table, file, words);
}

function fault({ row }: CsvRow, place: number, table: CsvTable, file: string, words: string): UsageError {
  return new UsageError(`${file}: row ${row}, column ${table.columns[place]}: ${words}`);
}

function startsOf(rows: readonly Row[]): number[] {
  const starts: number[] = [];
  let at = 0;
  let pending = false;
  for (const { value, event } of rows) {
    pending ||= event;
    if (value === undefined) continue;
    if (pending) starts.push(at);
    pending = false;
    at += 1;
  }
  return starts;
}
