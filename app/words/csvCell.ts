/**
 * A value as one cell of a CSV file. A text that a spreadsheet would take for a formula gets an apostrophe in front,
 * as does one that begins with an apostrophe itself, so taking one off gives the text back. Numbers stay numbers, the
 * negative ones too, also where they stand in a column of texts.
 * @see RFC 4180 section 2, points 5 to 7; OWASP, "CSV Injection", for the characters
 */
export function csvCell(value: unknown): string {
  if (value === undefined || value === null) return "";
  if (typeof value === "number" || typeof value === "boolean") return String(value);
  if (typeof value !== "string") return quoted(JSON.stringify(value));
  const first = value.charCodeAt(0);
  if (isRisky(first) && !NUMBER.test(value)) return quoted(`'${value}`);
  return quoted(value);
}

/** One line of a file, its end included. */
export const csvLine = (cells: readonly unknown[]): string => `${cells.map(csvCell).join(",")}\r\n`;

const NUMBER = /^[+-]?\d+(\.\d+)?(e[+-]?\d+)?$/i;
const NEEDS_QUOTES = /[",\r\n]/;

/** = + - @ TAB CR LF and the apostrophe itself. */
function isRisky(code: number): boolean {
  return (
    code === 0x3d ||
    code === 0x2b ||
    code === 0x2d ||
    code === 0x40 ||
    code === 0x27 ||
    code === 0x09 ||
    code === 0x0d ||
    code === 0x0a
  );
}

const quoted = (text: string) => (NEEDS_QUOTES.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
