/** A cell as the library gives it. */
export type BookCell = string | number | boolean | Date | null;

const DAY_MS = 86_400_000;
/** Day zero of a spreadsheet: a time of day without a date stands on it. */
const FIRST_DAY_MS = Date.UTC(1900, 0, 2);
const FIRST_DAY_1904_MS = Date.UTC(1904, 0, 2);

/**
 * What a cell says, as it would stand in a text file: figures to the fifteen digits a spreadsheet counts with, days as
 * 2026-04-03, with 14:30:00 behind where there is a time of day, and a time alone as 14:30:00.
 */
export function cellText(cell: BookCell, from1904: boolean): string {
  if (cell === null) return "";
  if (typeof cell === "number") return String(Number(cell.toPrecision(15)));
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return typeof cell === "string" ? cell : instantText(cell, from1904);
}

/** A day number as an instant of the UTC clock, which here stands for the wall's. @see ECMA-376-1, 18.17.4.1 */
export function instantOfSerial(serial: number, from1904: boolean): number {
  return Date.UTC(1899, 11, 30) + Math.round((serial + (from1904 ? 1462 : 0)) * 86_400) * 1_000;
}

function instantText(at: Date, from1904: boolean): string {
  const ms = Math.round(at.getTime() / 1_000) * 1_000; // a time of day is a fraction of a day: it falls a hair short
  if (!Number.isFinite(ms)) return "";
  const [day, time] = new Date(ms).toISOString().slice(0, 19).split("T") as [string, string]; // it has both
  if (ms < (from1904 ? FIRST_DAY_1904_MS : FIRST_DAY_MS)) return time;
  return ms % DAY_MS === 0 ? day : `${day} ${time}`;
}
