import type { DumpFormat } from "./DumpFormat.ts";

/**
 * The cells of one line, without the blanks around them. Quotes by RFC 4180 where cells are separated by a mark: a quoted
 * cell may hold the separator, a doubled quote is one. A quote that is never closed takes the rest of the line.
 */
export function splitCells(line: string, separator: DumpFormat["separator"]): string[] {
  if (separator === "blank") return line.trim().split(/\s+/);
  if (!line.includes('"')) return line.split(separator).map((cell) => cell.trim());
  const cells: string[] = [];
  let cell = "";
  let quoted = false;
  for (let i = 0; i < line.length; i += 1) {
    const c = line[i]!;
    if (c === '"' && quoted && line[i + 1] === '"') {
      cell += c;
      i += 1;
    } else if (c === '"' && (quoted || cell.trim() === "")) {
      quoted = !quoted;
      cell = quoted ? "" : cell;
    } else if (c === separator && !quoted) {
      cells.push(cell.trim());
      cell = "";
    } else cell += c;
  }
  cells.push(cell.trim());
  return cells;
}
