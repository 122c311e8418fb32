import { UsageError } from "./Command.ts";

export type CsvRow = {
  /** As a spreadsheet numbers it: the head is row 1. */
  readonly row: number;
  readonly cells: readonly string[];
};

export type CsvTable = {
  readonly columns: readonly string[];
  readonly rows: readonly CsvRow[];
};

/**
 * Reads a table with a head from CSV: comma, semicolon or tab between the cells, whichever the head has most of;
 * quotes by RFC 4180; UTF-8 or UTF-16 with a byte-order mark or without, else Windows-1252. Blank lines are passed over.
 * @throws UsageError  no head, a column twice, a row with another number of cells than the head, a quote never closed
 */
export function readCsv(bytes: Uint8Array, file: string): CsvTable {
  const text = decode(bytes);
  const lines = splitRecords(text, separatorOf(text), file);
  const [head, ...rows] = lines;
  if (head === undefined) throw new UsageError(`${file}: is empty; the first line must name the columns`);
  const columns = head.cells.map((cell) => cell.trim());
  const twice = columns.find((name, i) => columns.indexOf(name) !== i);
  if (twice !== undefined)
    throw new UsageError(`${file}: the column "${twice}" stands twice in the head; name each once`);
  for (const { row, cells } of rows) {
    if (cells.length !== columns.length) {
      throw new UsageError(
        `${file}: row ${row} has ${cells.length} cells and the head ${columns.length}; quote cells that hold the separator`,
      );
    }
  }
  return { columns, rows };
}

function decode(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder("utf-16be").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes); // takes off a byte-order mark
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

/** Counted in the head outside quotes; a tie goes to the first of the list. */
function separatorOf(text: string): string {
  const head = (/^\s*([^\r\n]*)/.exec(text)?.[1] ?? "").replace(/"[^"]*"/g, "");
  const counts = [",", ";", "\t"].map((mark) => ({ mark, count: head.split(mark).length }));
  return counts.reduce((best, next) => (next.count > best.count ? next : best)).mark;
}

function splitRecords(text: string, separator: string, file: string): CsvRow[] {
  const records: CsvRow[] = [];
  let cells: string[] = [];
  let cell = "";
  let quoted = false;
  let row = 1;
  const endCell = () => {
    cells.push(cell);
    cell = "";
  };
  const endRow = () => {
    endCell();
    if (cells.some((c) => c.trim() !== "")) records.push({ row, cells });
    cells = [];
    row += 1;
  };
  for (let i = 0; i < text.length; i += 1) {
    const c = text[i]!;
    if (quoted) {
      if (c !== '"') cell += c;
      else if (text[i + 1] === '"') {
        cell += '"';
        i += 1;
      } else quoted = false;
    } else if (c === '"' && cell === "") quoted = true;
    else if (c === separator) endCell();
    else if (c === "\n" || c === "\r") {
      if (c === "\r" && text[i + 1] === "\n") i += 1;
      endRow();
    } else cell += c;
  }
  if (quoted) throw new UsageError(`${file}: row ${row} opens a quote that is never closed`);
  if (cell !== "" || cells.length > 0) endRow();
  return records;
}
