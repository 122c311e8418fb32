import type { ListFile } from "../../app/contract/importViews.ts";
import { readTable } from "./readTable.ts";
import type { Table } from "./Table.ts";
import { TableError } from "./TableError.ts";

/** A zip archive, which a workbook is, and the container of older workbooks and of those with a password. */
const ZIP = Buffer.from([0x50, 0x4b, 0x03, 0x04]);
const COMPOUND = Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]);

/** The table a chosen file holds, whatever its name says: a workbook, else text. What it is not, is answered. */
export async function openTable({ base64, sheet }: Pick<ListFile, "base64" | "sheet">): Promise<Table | TableError> {
  const bytes = Buffer.from(base64, "base64");
  try {
    if (bytes.subarray(0, 8).equals(COMPOUND))
      throw new TableError("is a workbook of an old form or behind a password; save it as XLSX without one, or as CSV");
    if (!bytes.subarray(0, 4).equals(ZIP)) return readTable(bytes);
    const { readBook } = await import("./xlsx/readBook.ts"); // not every list is a workbook
    return await readBook(bytes, sheet);
  } catch (cause) {
    if (cause instanceof TableError) return cause;
    throw cause;
  }
}
