import type { BookCell } from "./cellText.ts";

/** So far down the head is looked for: titles, dates and names of the works stand above it. */
const LOOKED_AT = 30;

/**
 * Which row names the columns: the first one that is about as wide as the widest near the top and holds text alone.
 * @returns  its place from 0; the first row with anything in it where none is like a head
 */
export function headRow(cells: readonly (readonly BookCell[])[]): number {
  const top = cells.slice(0, LOOKED_AT);
  const width = (row: readonly BookCell[]) => row.filter((cell) => cell !== null).length;
  const widest = Math.max(...top.map(width));
  const isHead = (row: readonly BookCell[]) =>
    width(row) >= Math.max(1, 0.6 * widest) && row.every((cell) => cell === null || typeof cell === "string");
  const found = top.findIndex(isHead);
  return found >= 0 ? found : top.findIndex((row) => width(row) > 0);
}
