import type { Line } from "./layLines.ts";
import { HAIRLINE, INK, LEADING, type PdfSheet, QUIET } from "./PdfSheet.ts";
import type { Weight } from "./SheetFonts.ts";

export type TableColumn = {
  readonly title: string;
  /** Share of the width. */
  readonly share: number;
  readonly align?: "right";
};

const SIZE = 9;
const PAD = 4;

/** A table with hairlines; its head is drawn again on each page, its cells are tagged as such. */
export function drawTable(
  sheet: PdfSheet,
  columns: readonly TableColumn[],
  rows: readonly (readonly string[])[],
  { boldFirst = false }: { boldFirst?: boolean } = {},
): void {
  const all = columns.reduce((sum, column) => sum + column.share, 0);
  const widths = columns.map((column) => (column.share / all) * sheet.width);
  const laid = (cells: readonly string[], weight: (i: number) => Weight) =>
    columns.map((_, i) => sheet.lines(cells[i] ?? "", { size: SIZE, weight: weight(i) }, widths[i]! - 2 * PAD));
  const head = laid(
    columns.map((column) => column.title),
    () => "bold",
  );
  const table = sheet.tag("Table");
  const rowOf = (cells: readonly (readonly Line[])[], type: "TH" | "TD", artifact = false) => {
    const height = Math.max(...cells.map((lines) => lines.length)) * SIZE * LEADING + PAD;
    const top = sheet.y;
    const draw = (i: number) => {
      const x = sheet.left + widths.slice(0, i).reduce((sum, width) => sum + width, 0) + PAD;
      for (const [k, line] of cells[i]!.entries()) {
        const place = { x, y: top + PAD / 2 + k * SIZE * LEADING, size: SIZE, color: type === "TH" ? QUIET : INK };
        sheet.drawLine(line, { ...place, align: columns[i]!.align, within: widths[i]! - 2 * PAD });
      }
    };
    if (artifact) {
      sheet.artifact(() => {
        for (const i of columns.keys()) draw(i);
      });
    } else {
      const row = sheet.tag("TR", {}, table);
      for (const i of columns.keys()) {
        const cell = sheet.tag(type, type === "TH" ? { scope: "Column" } : {}, row);
        cell.add(() => draw(i));
        cell.end();
      }
      row.end();
    }
    sheet.y += height;
    sheet.artifact(() => {
      sheet.doc
        .moveTo(sheet.left, sheet.y)
        .lineTo(sheet.left + sheet.width, sheet.y)
        .lineWidth(type === "TH" ? 0.8 : 0.3)
        .stroke(HAIRLINE);
    });
  };
  const heightOf = (cells: readonly (readonly Line[])[]) =>
    Math.max(...cells.map((lines) => lines.length)) * SIZE * LEADING + PAD;
  sheet.need(heightOf(head) * 2);
  rowOf(head, "TH");
  for (const row of rows) {
    const cells = laid(row, (i) => (boldFirst && i === 0 ? "bold" : "regular"));
    if (sheet.y + heightOf(cells) > sheet.bottom) {
      sheet.newPage();
      rowOf(head, "TH", true);
    }
    rowOf(cells, "TD");
  }
  table.end();
  sheet.space(6);
}
