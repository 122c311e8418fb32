import { strToU8, zipSync } from "fflate";
import { readSheet } from "read-excel-file/node";
import type { Table, TableRow } from "../Table.ts";
import { TableError } from "../TableError.ts";
import { BookParts } from "./BookParts.ts";
import { type BookFacts, bookFacts, type Sheet } from "./bookFacts.ts";
import { type BookCell, cellText } from "./cellText.ts";
import { headRow } from "./headRow.ts";
import { sheetFacts } from "./sheetFacts.ts";
import { type Stretch, sheetStretches } from "./sheetStretches.ts";

/**
 * Reads a table with a head from a workbook (ECMA-376): the values as they were last worked out, formulas never. The
 * library is handed workbooks of our own making with the one sheet in it, which has been looked over: it neither sees what
 * was not looked at nor unpacks anything.
 * @param wanted  the sheet's name; undefined: the only one that is not hidden and holds something
 * @returns  no columns where the sheet must be chosen first
 * @throws TableError
 */
export async function readBook(bytes: Buffer, wanted: string | undefined): Promise<Table> {
  const parts = new BookParts(bytes);
  const facts = bookFacts(parts);
  const filled = new Map<Sheet, string>();
  for (const sheet of facts.sheets) {
    if (sheet.hidden && sheet.name !== wanted) continue;
    const xml = parts.text(sheet.path);
    if (/<(?:[\w.-]+:)?(?:v|is)[\s>]/.test(xml)) filled.set(sheet, xml);
  }
  const sheets = [...filled.keys()];
  if (sheets.length === 0) throw new TableError("is empty; the first line must name the columns");
  const sheet =
    wanted === undefined ? (sheets.length === 1 ? sheets[0] : undefined) : sheets.find((s) => s.name === wanted);
  const hidden = facts.sheets.filter((s) => s.hidden).length;
  const book = { sheets: sheets.map((s) => s.name), sheet: sheet?.name, hidden, from1904: facts.from1904 };
  if (sheet === undefined) return { ...asText, columns: [], rows: [], book: { ...book, joined: [] } };
  const xml = filled.get(sheet)!; // it is one of its keys
  const joined = sheetFacts(xml);
  const cells = await cellsOf(xml, parts, facts);
  const head = headRow(cells);
  const { columns, places } = columnsOf(cells, head);
  const own = joined.flatMap(({ column, fromRow, toRow }) => {
    const place = places.indexOf(column - 1);
    return place < 0 || fromRow <= head + 1 ? [] : [{ fromRow, toRow: Math.min(toRow, cells.length), place }];
  });
  return { ...asText, columns, rows: rowsOf(cells, head, places, own, facts.from1904), book: { ...book, joined: own } };
}

const asText = { encoding: "utf-8", separator: "," } as const;

/** The library is handed stretches of rows, each a workbook of our own making. */
async function cellsOf(xml: string, parts: BookParts, { strings, styles, from1904 }: BookFacts): Promise<BookCell[][]> {
  const styleSheet = styles === undefined ? undefined : parts.text(styles);
  const cells: BookCell[][] = [];
  for (const stretch of sheetStretches(xml, strings === undefined ? undefined : parts.text(strings))) {
    while (cells.length < stretch.firstRow - 1) cells.push([]);
    for (const row of await readStretch(stretch, styleSheet, from1904)) cells.push(row);
  }
  return cells;
}

async function readStretch(
  { firstRow, sheet, strings }: Stretch,
  styles: string | undefined,
  from1904: boolean,
): Promise<BookCell[][]> {
  const relation = (id: string, type: string, target: string) =>
    `<Relationship Id="${id}" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/${type}" Target="${target}"/>`;
  const book = {
    "xl/workbook.xml": `<workbook><workbookPr date1904="${from1904 ? 1 : 0}"/><sheets><sheet name="1" sheetId="1" id="s"/></sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": `<Relationships>${relation("s", "worksheet", "sheet.xml")}${relation("t", "sharedStrings", "strings.xml")}${relation("y", "styles", "styles.xml")}</Relationships>`,
    "xl/sheet.xml": sheet,
    "xl/strings.xml": strings,
    ...(styles === undefined ? {} : { "xl/styles.xml": styles }),
  };
  const packed = zipSync(Object.fromEntries(Object.entries(book).map(([path, text]) => [path, strToU8(text)])), {
    level: 0,
  });
  try {
    // Its types name the class of a date for the date itself.
    return (await readSheet(Buffer.from(packed.buffer, packed.byteOffset, packed.length))) as unknown as BookCell[][];
  } catch (cause) {
    const why = cause instanceof Error ? cause.message.slice(0, 200) : "no reason given";
    const where = why.replace(/\brow (\d+)/g, (_, row) => `row ${Number(row) + firstRow - 1}`);
    throw new TableError(`cannot be read as a workbook (${where})`);
  }
}

/** Columns that have a name or hold anything; one without a name is called by its letter. */
function columnsOf(cells: readonly BookCell[][], head: number): { columns: string[]; places: number[] } {
  const names = cells[head] ?? [];
  const used = names.map((name) => name !== null);
  for (const row of cells.slice(head + 1)) for (let i = 0; i < row.length; i += 1) used[i] ||= row[i] !== null;
  const places = [...used.keys()].filter((i) => used[i]);
  const columns = places.map((i) => (names[i] == null ? letters(i) : cellText(names[i]!, false).trim()));
  const twice = columns.find((name, i) => columns.indexOf(name) !== i);
  if (twice !== undefined) throw new TableError(`the column "${twice}" stands twice in the head; name each once`);
  return { columns, places };
}

const letters = (i: number): string =>
  (i >= 26 ? letters(Math.floor(i / 26) - 1) : "") + String.fromCharCode(65 + (i % 26));

type OwnJoined = NonNullable<Table["book"]>["joined"];

function rowsOf(
  cells: readonly BookCell[][],
  head: number,
  places: readonly number[],
  joined: OwnJoined,
  from1904: boolean,
): TableRow[] {
  const rows: TableRow[] = [];
  const values = cells.map((row) => places.map((i) => cellText(row[i] ?? null, from1904)));
  for (const { fromRow, toRow, place } of joined) {
    for (let row = fromRow; row < toRow; row += 1)
      if (values[row]![place] === "") values[row]![place] = values[fromRow - 1]![place]!;
  }
  for (let i = head + 1; i < values.length; i += 1) {
    if (values[i]!.some((text) => text !== "")) rows.push({ row: i + 1, cells: values[i]! });
  }
  return rows;
}
