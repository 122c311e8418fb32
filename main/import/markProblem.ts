import type { ImportProblem } from "../../app/contract/importViews.ts";
import type { MappedColumn } from "./mapColumns.ts";
import { rowProblem } from "./problem.ts";
import type { Table } from "./Table.ts";

/** One comma and one point as decimal marks in the same file: one of them groups thousands, and nobody can tell which. */
export function markProblem(table: Table, columns: readonly MappedColumn[]): ImportProblem | undefined {
  if (table.book !== undefined) return undefined; // its figures are numbers, and have no mark
  let first: { readonly mark: string; readonly row: number } | undefined;
  const figures = columns.filter(({ field }) => field !== undefined && /^(force|number|share)$/.test(field.form));
  for (const { row, cells } of table.rows) {
    for (const { place, name } of figures) {
      const mark = /^[+-]?\s*\d+([.,])\d+(?![.,\d])/.exec((cells[place] ?? "").trim())?.[1];
      if (mark === undefined) continue;
      first ??= { mark, row };
      if (mark === first.mark) continue;
      const message = `it is written with "${mark}" and row ${first.row} with "${first.mark}": use one decimal mark in the whole file`;
      return rowProblem("mixedMarks", row, name, cells[place]!.trim(), message);
    }
  }
  return undefined;
}
