import { TableError } from "../TableError.ts";
import { attribute } from "./eachTag.ts";

/** Some rows of a sheet as a sheet of their own that begins at row 1, and the shared texts they use. */
export type Stretch = { readonly firstRow: number; readonly sheet: string; readonly strings: string };

/** A stretch is closed with the row in which it has become so long: the library slows down with the square of the length. */
const LONG = 1_000_000;

/**
 * Cuts a sheet that has been looked over into stretches of rows. Shared texts are numbered anew in each. Days that are
 * written as text (ISO 8601) become text.
 * @param strings  the text of the part with the shared texts
 * @throws TableError  rows out of their order, a shared text that is not there
 */
export function* sheetStretches(xml: string, strings: string | undefined): Generator<Stretch> {
  const shared = (strings ?? "").match(SHARED) ?? [];
  let open: OpenStretch | undefined;
  for (const [, attributes = "", content = ""] of sheetData(xml).matchAll(CELL)) {
    if (content === "") continue;
    const cell = cellOf(attributes);
    if (open !== undefined && cell.row < open.row) throw new TableError("holds a sheet whose rows are out of order");
    if (open !== undefined && open.length > LONG && cell.row > open.row) {
      yield open.closed();
      open = undefined;
    }
    open ??= new OpenStretch(cell.row, shared);
    open.add(cell, content.replace(PREFIX, "<$1"));
  }
  if (open !== undefined) yield open.closed();
}

const SHARED = /<(?:[\w.-]+:)?si(?:\s*\/>|[\s>][\s\S]*?<\/(?:[\w.-]+:)?si\s*>)/g;
const CELL =
  /<(?:[\w.-]+:)?c((?:\s+[\w:.-]+\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(?:\/>|>([\s\S]*?)<\/(?:[\w.-]+:)?c\s*>)/g;
const PREFIX = /<(\/?)[\w.-]+:/g;
/** As nearly every cell is written; the order of the attributes is free. */
const PLAIN = /^\s+r="([A-Z]{1,3})(\d{1,7})"(?:\s+s="(\d+)")?(?:\s+t="(\w+)")?\s*$/;

type CellTag = { readonly column: string; readonly row: number; readonly style?: string; readonly type?: string };

function cellOf(attributes: string): CellTag {
  const [, column, row, style, type] = PLAIN.exec(attributes) ?? [];
  const given = { ...(style === undefined ? {} : { style }), ...(type === undefined ? {} : { type }) };
  if (column !== undefined) return { column, row: Number(row), ...given };
  const [at, s, t] = ["r", "s", "t"].map((name) => attribute(attributes, name));
  const [, letters = "", digits] = /^([A-Z]+)(\d+)$/.exec(at ?? "") ?? [];
  return {
    column: letters,
    row: Number(digits),
    ...(s === undefined ? {} : { style: s }),
    ...(t === undefined ? {} : { type: t }),
  };
}

function sheetData(xml: string): string {
  const from = xml.search(/<(?:[\w.-]+:)?sheetData[\s>]/);
  const to = xml.search(/<\/(?:[\w.-]+:)?sheetData\s*>/);
  return from < 0 || to < 0 ? "" : xml.slice(from, to);
}

class OpenStretch {
  row: number;
  length = 0;
  readonly #firstRow: number;
  readonly #shared: readonly string[];
  readonly #numbers = new Map<string, number>();
  readonly #strings: string[] = [];
  readonly #cells: string[] = [];

  constructor(firstRow: number, shared: readonly string[]) {
    this.row = firstRow;
    this.#firstRow = firstRow;
    this.#shared = shared;
  }

  add({ column, row, style, type }: CellTag, content: string): void {
    if (this.#cells.length === 0) this.#put(`<row r="1">`);
    else if (row > this.row) this.#put(`</row><row r="${row - this.#firstRow + 1}">`);
    this.row = row;
    const place = `<c r="${column}${row - this.#firstRow + 1}"`;
    if (type === "s") this.#put(`${place} t="s"><v>${this.#numberOf(valueIn(content))}</v></c>`);
    else if (type === "d")
      this.#put(
        `${place} t="str"><v>${valueIn(content)
          .replace("T", " ")
          .replace(/\.\d+|Z$/g, "")}</v></c>`,
      );
    else
      this.#put(
        `${place}${style === undefined ? "" : ` s="${style}"`}${type === undefined ? "" : ` t="${type}"`}>${content}</c>`,
      );
  }

  closed(): Stretch {
    return {
      firstRow: this.#firstRow,
      sheet: `<worksheet><sheetData>${this.#cells.join("")}</row></sheetData></worksheet>`,
      strings: `<sst>${this.#strings.join("")}</sst>`,
    };
  }

  #put(text: string): void {
    this.#cells.push(text);
    this.length += text.length;
  }

  #numberOf(place: string): number {
    const known = this.#numbers.get(place);
    if (known !== undefined) return known;
    const text = /^\d+$/.test(place) ? this.#shared[Number(place)] : undefined;
    if (text === undefined)
      throw new TableError(
        `cannot be read as a workbook (a cell names the shared text ${place.slice(0, 20)}, which is not there)`,
      );
    this.#strings.push(text.replace(PREFIX, "<$1"));
    this.#numbers.set(place, this.#strings.length - 1);
    return this.#strings.length - 1;
  }
}

const valueIn = (content: string): string => /<v[^>]*>([^<]*)<\/v/.exec(content)?.[1]?.trim() ?? "";
