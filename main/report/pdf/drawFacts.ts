import { INK, LEADING, type PdfSheet, QUIET } from "./PdfSheet.ts";

export type Fact = readonly [label: string, value: string];

const SIZE = 9.5;
const GAP = 14;

/** Names and values side by side, two pairs a row, read row by row. Values that are long take as many lines as they need. */
export function drawFacts(sheet: PdfSheet, facts: readonly Fact[], columns: 1 | 2 = 2): void {
  const width = (sheet.width - GAP * (columns - 1)) / columns;
  const labelWidth = Math.min(110, width * 0.4);
  const list = sheet.tag("L");
  for (let at = 0; at < facts.length; at += columns) {
    const row = facts.slice(at, at + columns).map(([label, value]) => ({
      label: sheet.lines(label, { size: SIZE, weight: "regular" }, labelWidth - 6),
      value: sheet.lines(value, { size: SIZE, weight: "regular" }, width - labelWidth),
    }));
    const height = Math.max(...row.flatMap(({ label, value }) => [label.length, value.length])) * SIZE * LEADING + 2;
    sheet.need(height);
    const y = sheet.y;
    for (const [i, { label, value }] of row.entries()) {
      const x = sheet.left + i * (width + GAP);
      const item = sheet.tag("LI", {}, list);
      const name = sheet.tag("Lbl", {}, item);
      name.add(() => {
        for (const [k, line] of label.entries())
          sheet.drawLine(line, { x, y: y + k * SIZE * LEADING, size: SIZE, color: QUIET });
      });
      const body = sheet.tag("LBody", {}, item);
      body.add(() => {
        for (const [k, line] of value.entries())
          sheet.drawLine(line, { x: x + labelWidth, y: y + k * SIZE * LEADING, size: SIZE, color: INK });
      });
      item.end();
    }
    sheet.y += height;
  }
  list.end();
  sheet.space(4);
}
