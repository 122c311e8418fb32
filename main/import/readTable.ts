import type { Table, TableRow } from "./Table.ts";
import { TableError } from "./TableError.ts";

/**
 * Reads a table with a head from CSV: comma, semicolon or tab between the cells, whichever the head has most of;
 * quotes by RFC 4180; UTF-8 or UTF-16 with a byte-order mark or without, else Windows-1252. Blank lines are passed over.
 * @throws TableError  no head, a column twice, a quote never closed
 */
export function readTable(bytes: Uint8Array): Table {
  const encoding = encodingOf(bytes);
  const text = new TextDecoder(encoding).decode(bytes); // takes off a byte-order mark
  const separator = separatorOf(text);
  const [head, ...rows] = splitRecords(text, separator);
  if (head === undefined) throw new TableError("is empty; the first line must name the columns");
  const columns = head.cells.map((cell) => cell.trim());
  const twice = columns.find((name, i) => columns.indexOf(name) !== i);
  if (twice !== undefined) throw new TableError(`the column "${twice}" stands twice in the head; name each once`);
  return { encoding, separator, columns, rows, book: undefined };
}

function encodingOf(bytes: Uint8Array): Table["encoding"] {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return "utf-16le";
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return "utf-16be";
  const [even, odd] = zeros(bytes);
  if (odd > 0 && even === 0) return "utf-16le";
  if (even > 0 && odd === 0) return "utf-16be";
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return "utf-8";
  } catch {
    return "windows-1252";
  }
}

/** Zero bytes at even and odd places near the beginning: plain letters in UTF-16 have one each, other text has none. */
function zeros(bytes: Uint8Array): readonly [even: number, odd: number] {
  const counts: [number, number] = [0, 0];
  for (let i = 0; i < Math.min(bytes.length, 400); i += 1) if (bytes[i] === 0) counts[i % 2 === 0 ? 0 : 1] += 1;
  return counts;
}

/** Counted in the head outside quotes; a tie goes to the first of the list. */
function separatorOf(text: string): Table["separator"] {
  const head = (/^\s*([^\r\n]*)/.exec(text)?.[1] ?? "").replace(/"[^"]*"/g, "");
  const counts = ([",", ";", "\t"] as const).map((mark) => ({ mark, count: head.split(mark).length }));
  return counts.reduce((best, next) => (next.count > best.count ? next : best)).mark;
}

function splitRecords(text: string, separator: string): TableRow[] {
  const records: TableRow[] = [];
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
  if (quoted) throw new TableError(`row ${row} opens a quote that is never closed`);
  if (cell !== "" || cells.length > 0) endRow();
  return records;
}
