import { type Direction, directions, type ProofReading } from "../../app/proof/data/ProofReading.ts";
import { parseDecimal } from "../../app/quantity/parseForce.ts";
import { parseForceUnit } from "../../app/quantity/parseForceUnit.ts";
import { UsageError } from "./Command.ts";
import { type CsvRow, readCsv } from "./readCsv.ts";

export type ProofFile = {
  readonly readings: readonly ProofReading[];
  /** As the column names it, after `_`; undefined where it names none. */
  readonly referenceUnit: string | undefined;
  readonly indicationUnit: string | undefined;
};

const known = ["reference", "indication", "run", "step", "position", "direction"] as const;
type Column = (typeof known)[number];
type Columns = ReadonlyMap<
  Column,
  { readonly place: number; readonly unit: string | undefined; readonly name: string }
>;

/**
 * The readings of a proof from CSV: `reference` and `indication`, each with its unit after `_`, and optionally `run`,
 * `step`, `position` (degrees) and `direction`. Order of columns and case of their names are free.
 * @throws UsageError  a column that is unknown, missing, or in a unit of torque; a cell that cannot be read, by row and column
 */
export function readProofCsv(bytes: Uint8Array, file: string): ProofFile {
  const table = readCsv(bytes, file);
  const columns = findColumns(table.columns, file);
  if (table.rows.length === 0) throw new UsageError(`${file}: has a head and no rows; each row is one reading`);
  return {
    readings: table.rows.map((row) => reading(row, columns, file)),
    referenceUnit: columns.get("reference")!.unit,
    indicationUnit: columns.get("indication")!.unit,
  };
}

function findColumns(names: readonly string[], file: string): Columns {
  const columns = new Map<Column, { place: number; unit: string | undefined; name: string }>();
  for (const [place, name] of names.entries()) {
    const parts = /^([a-z]+)(?:_(.+))?$/i.exec(name);
    const column = known.find((k) => k === parts?.[1]?.toLowerCase());
    if (column === undefined)
      throw new UsageError(
        `${file}: the column "${name}" is not known; the columns are ${known.join(", ")}, a unit stands after _ as in reference_kN`,
      );
    if (columns.has(column)) throw new UsageError(`${file}: two columns are named ${column}; keep one`);
    columns.set(column, { place, name, unit: unitOf(column, parts?.[2], name, file) });
  }
  for (const column of ["reference", "indication"] as const) {
    if (!columns.has(column))
      throw new UsageError(`${file}: the column "${column}" is missing; a proof needs reference and indication`);
  }
  return columns;
}

function unitOf(column: Column, unit: string | undefined, name: string, file: string): string | undefined {
  if (unit === undefined) return undefined;
  if (column === "position" && /^(deg|degrees?|°)$/i.test(unit)) return undefined;
  if (column !== "reference" && column !== "indication")
    throw new UsageError(`${file}: the column "${name}" has no unit; name it ${column}`);
  const meaning = parseForceUnit(unit);
  if (meaning.kind === "torque")
    throw new UsageError(`${file}: column "${name}": ${meaning.reason}; a proof needs forces`);
  if (meaning.kind === "mass")
    throw new UsageError(
      `${file}: column "${name}": ${unit} is a mass; write ${column}_${meaning.unit} where that force is meant`,
    );
  return meaning.kind === "force" ? meaning.unit : unit;
}

function reading({ row, cells }: CsvRow, columns: Columns, file: string): ProofReading {
  const cell = (column: Column) => {
    const at = columns.get(column);
    const text = at === undefined ? "" : cells[at.place]!.trim();
    return text === "" ? undefined : text;
  };
  const fault = (column: Column, words: string) =>
    new UsageError(`${file}: row ${row}, column ${columns.get(column)!.name}: ${words}`);
  const number = (column: Column) => {
    const text = cell(column);
    const value = text === undefined ? undefined : parseDecimal(text);
    if (text !== undefined && value === undefined) throw fault(column, `"${text}" is not a number`);
    return value;
  };
  const written = cell("direction") ?? "up";
  const direction = directions.find((d) => d.toLowerCase() === written.toLowerCase());
  if (direction === undefined) throw fault("direction", `"${written}" is none of ${directions.join(", ")}`);
  const indication = number("indication");
  if (indication === undefined) throw fault("indication", "is empty; each row is one reading");
  const reference = number("reference") ?? atRest(direction);
  if (reference === undefined) throw fault("reference", "is empty; only zero and creep rows may leave it so");
  return { reference, indication, direction, run: cell("run"), step: cell("step"), positionDeg: number("position") };
}

/** Zero and creep rows need no load to be understood. */
const atRest = (direction: Direction) => (direction === "up" || direction === "down" ? undefined : 0);
