import type { ImportPreview, ImportProblem } from "../../app/contract/importViews.ts";
import type { ListField } from "./fields.ts";
import type { MappedColumn } from "./mapColumns.ts";
import { headProblem } from "./problem.ts";
import type { Table } from "./Table.ts";

/** So many problems are told one by one. */
const TOLD = 200;

/** What reading a table has come to. */
export type Found = {
  readonly ready: number;
  readonly passedOver: number;
  readonly problems: readonly ImportProblem[];
} & Partial<Pick<ImportPreview, "dateOrder" | "unit" | "names" | "takes">>;

/** What a page is shown of a table before anything of it is filed. */
export function previewOf(
  table: Table,
  columns: readonly MappedColumn[],
  fields: readonly ListField[],
  { ready, passedOver, problems, dateOrder, unit, names = [], takes }: Found,
): ImportPreview {
  return {
    book: table.book && { sheets: table.book.sheets, sheet: table.book.sheet },
    encoding: table.encoding,
    separator: table.separator,
    columns: columns.map(({ name, field, head, place }) => ({
      name,
      field: field?.field,
      unit: head.unit,
      examples: examplesOf(table, place),
    })),
    fields: fields.map(({ field, needed, form, many = false }) => ({ field, needed, force: form === "force", many })),
    rowCount: table.rows.length,
    ready,
    passedOver,
    problems: problems.slice(0, TOLD),
    problemCount: problems.length,
    stopped: ready === 0 || problems.some((p) => p.weight === "stops"),
    dateOrder,
    unit,
    names,
    takes,
  };
}

/** Of a file that is no table, and why, in words. */
export function unreadable(message: string, fields: readonly ListField[]): ImportPreview {
  const nothing = { encoding: "utf-8", separator: ",", columns: [], rows: [], book: undefined } as const;
  const problems = [headProblem("unreadable", undefined, "", message)];
  return previewOf(nothing, [], fields, { ready: 0, passedOver: 0, problems });
}

/** What stands against a workbook as a whole: which sheet is meant has to be said first. */
export function bookProblems({ book }: Table): ImportProblem[] {
  if (book === undefined || book.sheet !== undefined) return [];
  const message = `The workbook has several sheets with something in them (${book.sheets.join(", ")}): say which one it is.`;
  return [headProblem("sheetWanted", undefined, book.sheets.join(", "), message)];
}

function examplesOf({ rows }: Table, place: number): string[] {
  const found: string[] = [];
  for (const { cells } of rows) {
    const text = cells[place]?.trim() ?? "";
    if (text !== "") found.push(text.slice(0, 60));
    if (found.length === 3) break;
  }
  return found;
}
