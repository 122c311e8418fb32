import type { ImportProblem } from "../../../app/contract/importViews.ts";
import type { MappedColumn } from "../mapColumns.ts";
import { rowProblem } from "../problem.ts";
import type { Table } from "../Table.ts";

const reads = { code: "merged", why: "the joined cell is read for each of them" } as const;
const stands = {
  code: "mergedValue",
  why: "one value cannot stand for several rows: write it into each row it belongs to",
} as const;

/**
 * Cells of a workbook that stand for several rows. A name or a day is read for each of them; a force was measured once.
 * @returns  what is to be said of them, and the rows whose force it is about
 */
export function joinedCells(
  { book }: Table,
  columns: readonly MappedColumn[],
): { readonly problems: readonly ImportProblem[]; readonly valueRows: ReadonlySet<number> } {
  const problems: ImportProblem[] = [];
  const valueRows = new Set<number>();
  for (const { fromRow, toRow, place } of book?.joined ?? []) {
    const column = columns[place];
    if (column?.field === undefined) continue;
    const isValue = column.field.form === "force";
    const { code, why } = isValue ? stands : reads;
    const rows = `rows ${fromRow} to ${toRow}`;
    problems.push(rowProblem(code, fromRow, column.name, rows, `${rows} are joined; ${why}`));
    if (isValue) for (let row = fromRow; row <= toRow; row += 1) valueRows.add(row);
  }
  return { problems, valueRows };
}
