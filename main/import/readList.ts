import type { ImportPreview, ImportProblem, ListFile, ListKind } from "../../app/contract/importViews.ts";
import type { ForceUnit } from "../../app/quantity/forceUnits.ts";
import { parseForceUnit } from "../../app/quantity/parseForceUnit.ts";
import { readTaper } from "../../app/verdict/readTaper.ts";
import { fieldsOf } from "./fields.ts";
import { type MappedColumn, mapColumns, mappingProblems } from "./mapColumns.ts";
import { markProblem } from "./markProblem.ts";
import { bookProblems, previewOf, unreadable } from "./previewOf.ts";
import { rowProblem } from "./problem.ts";
import { readCell } from "./readCell.ts";
import { schemaProblems } from "./schemaProblems.ts";
import type { Table, TableRow } from "./Table.ts";
import { TableError } from "./TableError.ts";
import { Twins } from "./Twins.ts";
import { type RowValues, toBody } from "./toBody.ts";

/** Names and serial numbers that are in use in the register. */
export type Known = { readonly names: ReadonlySet<string>; readonly serials: ReadonlySet<string> };

/** A list for the register. */
export type RegisterFile = ListFile & { readonly what: ListKind };

/** A list as read: what a page is shown, and the bodies that would be filed. Empty where anything stands against it. */
export type ReadList = { readonly preview: ImportPreview; readonly bodies: readonly Record<string, unknown>[] };

/**
 * Reads a list of spindles, adapters or gauges for the register, all of it or nothing: every problem is found, with its
 * row and column, before anything is filed.
 * @param table  what `openTable` found in the file
 * @param newId  for the records
 * @param goOn  called often; may throw to end it
 */
export function readList(
  file: RegisterFile,
  table: Table | TableError,
  known: Known,
  newId: () => string,
  goOn: () => void = () => {},
): ReadList {
  const fields = fieldsOf[file.what];
  if (table instanceof TableError) {
    return { preview: unreadable(`${file.fileName}: ${table.message}.`, fields), bodies: [] };
  }
  const columns = mapColumns(table.columns, fields, file.mapping);
  const asked = bookProblems(table);
  const before = asked.length > 0 ? asked : mappingProblems(columns, fields, file.unit, table.rows);
  const marks = markProblem(table, columns);
  if (marks !== undefined) before.push(marks);
  const rows = before.length > 0 ? noRows : readRows(table, columns, file, known, newId, goOn);
  const problems = before.concat(rows.problems); // too many to be spread
  const found = { ready: rows.bodies.length, passedOver: rows.passedOver, problems, unit: file.unit };
  const preview = previewOf(table, columns, fields, found);
  return { preview, bodies: preview.stopped ? [] : rows.bodies };
}

type Rows = {
  readonly bodies: readonly Record<string, unknown>[];
  readonly problems: readonly ImportProblem[];
  readonly passedOver: number;
};
const noRows: Rows = { bodies: [], problems: [], passedOver: 0 };

function readRows(
  table: Table,
  columns: readonly MappedColumn[],
  file: RegisterFile,
  known: Known,
  newId: () => string,
  goOn: () => void,
): Rows {
  const twins = new Twins(known, file.passOverKnown === true);
  const bodies: Record<string, unknown>[] = [];
  const problems: ImportProblem[] = [];
  for (const row of table.rows) {
    if (row.row % 1_000 === 0) goOn();
    const found: ImportProblem[] = [];
    const values = readRow(row, columns, file.unit, found);
    if (values === undefined) {
      const counts = `it has ${row.cells.length} cells and the head ${columns.length}`;
      problems.push(rowProblem("cells", row.row, undefined, counts, `${counts}; quote cells that hold the separator`));
      continue;
    }
    if (twins.passesOver(values)) continue;
    const { body, schema } = toBody(file.what, values, newId());
    // A cell that could not be read is absent from the body: the schema's word on it would say the same once more.
    const told = new Set(found.map((p) => p.column));
    found.push(...schemaProblems(schema.safeParse(body), row.row, columns).filter((p) => !told.has(p.column)));
    found.push(...twins.problems(values, row.row, columns));
    problems.push(...found, ...taperRemark(values, row.row, columns));
    if (found.length === 0) bodies.push(body);
  }
  return { bodies, problems, passedOver: twins.passedOver };
}

/** Undefined: the row is not as long as the head. Cells that cannot be read go to `problems`. */
function readRow(
  { row, cells }: TableRow,
  columns: readonly MappedColumn[],
  fileUnit: string | undefined,
  problems: ImportProblem[],
): RowValues | undefined {
  if (cells.length !== columns.length) return undefined;
  const values: Record<string, string | number> = {};
  // The unit's own column first: the forces of the row are read by it.
  const inOrder = columns.toSorted((a, b) => Number(b.field?.form === "unit") - Number(a.field?.form === "unit"));
  for (const { field, head, name, place } of inOrder) {
    const text = cells[place]!.trim();
    if (field === undefined || text === "") continue;
    const unit = head.unit ?? unitNamed(values.unit) ?? unitNamed(fileUnit);
    const read = readCell(text, field.form, { unit, percent: head.percent });
    if ("value" in read) values[field.field] = read.value;
    else problems.push(rowProblem(read.code, row, name, text, read.message));
  }
  return values;
}

function unitNamed(text: string | number | undefined): ForceUnit | undefined {
  const meaning = typeof text === "string" ? parseForceUnit(text) : undefined;
  return meaning?.kind === "force" ? meaning.unit : undefined;
}

/** A taper of the user's own naming is kept; it is told, since it is often a slip of the pen. */
function taperRemark({ taper }: RowValues, row: number, columns: readonly MappedColumn[]): ImportProblem[] {
  if (typeof taper !== "string" || readTaper(taper) !== undefined) return [];
  const column = columns.find((c) => c.field?.field === "taper")?.name;
  return [
    rowProblem(
      "taperUnknown",
      row,
      column,
      taper,
      `"${taper}" is no taper of a standard known here; it is kept as it stands`,
    ),
  ];
}
