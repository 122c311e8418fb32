import { readTable } from "../import/readTable.ts";
import type { Table, TableRow } from "../import/Table.ts";
import { TableError } from "../import/TableError.ts";
import { UsageError } from "./Command.ts";

export type CsvRow = TableRow;
export type CsvTable = Pick<Table, "columns" | "rows">;

/**
 * Reads a table with a head from CSV, every row as long as the head; see `readTable`.
 * @throws UsageError  no head, a column twice, a row with another number of cells than the head, a quote never closed
 */
export function readCsv(bytes: Uint8Array, file: string): CsvTable {
  const { columns, rows } = tableOf(bytes, file);
  const odd = rows.find(({ cells }) => cells.length !== columns.length);
  if (odd === undefined) return { columns, rows };
  throw new UsageError(
    `${file}: row ${odd.row} has ${odd.cells.length} cells and the head ${columns.length}; quote cells that hold the separator`,
  );
}

function tableOf(bytes: Uint8Array, file: string): Table {
  try {
    return readTable(bytes);
  } catch (cause) {
    if (cause instanceof TableError) throw new UsageError(`${file}: ${cause.message}`);
    throw cause;
  }
}
