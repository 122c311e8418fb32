import { TableError } from "../TableError.ts";
import { attribute, eachTag } from "./eachTag.ts";

/** A spreadsheet of this form has no more rows; ours read so many columns. */
const LAST_ROW = 1_048_576;
const MOST_COLUMNS = 200;
const MOST_CELLS = 6_000_000;

/** Cells joined into one, rows and columns counted from 1, ends included. */
export type Joined = { readonly fromRow: number; readonly toRow: number; readonly column: number };

/**
 * Looks a sheet over before it is read: a cell that says it stands in column ten million would be given ten million
 * empty neighbours.
 * @returns  what is joined over several rows
 * @throws TableError  places outside what a sheet can have, or marks that two readers could read differently
 */
export function sheetFacts(xml: string): Joined[] {
  const joined: Joined[] = [];
  let cells = 0;
  const whole = eachTag(xml, ["row", "c", "mergeCell"], (tag, attributes, empty) => {
    if (tag === "row") lookAtRow(attribute(attributes, "r"));
    else if (tag === "mergeCell") joined.push(...joinedBy(attribute(attributes, "ref") ?? ""));
    else {
      cells += 1;
      if (!empty) lookAtCell(attribute(attributes, "r"));
    }
  });
  if (!whole) throw new TableError("holds a sheet that is not well formed");
  if (cells > MOST_CELLS) throw new TableError(`holds more than ${MOST_CELLS} cells in one sheet; save a part of it`);
  return joined;
}

function lookAtRow(row: string | undefined): void {
  if (row === undefined) return;
  const n = Number(row);
  if (!(Number.isInteger(n) && n >= 1 && n <= LAST_ROW))
    throw new TableError(`holds a row ${row.slice(0, 20)}, which no sheet has`);
}

function lookAtCell(at: string | undefined): void {
  const place = placeOf(at ?? "");
  if (place === undefined)
    throw new TableError(`holds a cell that does not say where it stands (${(at ?? "").slice(0, 20)})`);
  if (place.column > MOST_COLUMNS)
    throw new TableError(`has cells beyond column ${MOST_COLUMNS}; save only the list itself`);
}

/** "AB12" as row and column from 1; undefined where no sheet has such a place. */
function placeOf(at: string): { readonly row: number; readonly column: number } | undefined {
  const parts = /^([A-Z]{1,3})(\d{1,7})$/.exec(at);
  if (parts === null) return undefined;
  const row = Number(parts[2]);
  let column = 0;
  for (const letter of parts[1]!) column = column * 26 + letter.charCodeAt(0) - 64;
  return row >= 1 && row <= LAST_ROW ? { row, column } : undefined;
}

function joinedBy(ref: string): Joined[] {
  const [from, to] = ref.split(":").map(placeOf);
  if (from === undefined || to === undefined || to.row <= from.row) return [];
  return [{ fromRow: from.row, toRow: to.row, column: from.column }];
}
