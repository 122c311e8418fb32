import type { ImportProblem } from "../../app/contract/importViews.ts";

type Code = ImportProblem["code"];

/** Something about the head, or the file as a whole. */
export function headProblem(code: Code, column: string | undefined, about: string, message: string): ImportProblem {
  return { row: column === undefined ? undefined : 1, column, code, about, message, weight: "stops" };
}

/** Something about one cell, or a row. */
export function rowProblem(
  code: Code,
  row: number,
  column: string | undefined,
  about: string,
  message: string,
): ImportProblem {
  const where = column === undefined ? `Row ${row}` : `Row ${row}, ${column}`;
  const weight = remarks.has(code) ? "tell" : "stops";
  return { row, column, code, about: about.slice(0, 80), message: `${where}: ${message}`, weight };
}

/** Something about the file as a whole that stands against nothing. */
export function fileRemark(code: Code, about: string, message: string): ImportProblem {
  return { row: undefined, column: undefined, code, about: about.slice(0, 200), message, weight: "tell" };
}

const remarks: ReadonlySet<Code> = new Set(["taperUnknown", "merged", "farOff"]);
