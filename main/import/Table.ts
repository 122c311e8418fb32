import type { Book, ImportPreview } from "../../app/contract/importViews.ts";

export type TableRow = {
  /** As a spreadsheet numbers it: the head is row 1 where nothing stands above it. */
  readonly row: number;
  readonly cells: readonly string[];
};

export type Table = {
  readonly encoding: ImportPreview["encoding"];
  readonly separator: ImportPreview["separator"];
  readonly columns: readonly string[];
  /** Rows may have more or fewer cells than there are columns. */
  readonly rows: readonly TableRow[];
  /** Undefined: the file is text. */
  readonly book: BookTable | undefined;
};

/** What a workbook says beside its cells. */
export type BookTable = Book & {
  /** Sheets that are hidden; they are not read. */
  readonly hidden: number;
  /** Day numbers count from 1904 instead of 1900. */
  readonly from1904: boolean;
  /** Cells joined over several rows, each of which reads the one value that stands there. */
  readonly joined: readonly { readonly fromRow: number; readonly toRow: number; readonly place: number }[];
};
