import type { StopView } from "../../../app/contract/roundViews.ts";
import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import { formatForceFigure } from "../../../app/quantity/formatForce.ts";
import { labelCode } from "../labels/labelCode.ts";
import { drawQr } from "../pdf/drawQr.ts";
import { HAIRLINE, LEADING, type PdfSheet, QUIET } from "../pdf/PdfSheet.ts";
import type { SheetFacts } from "./sheetFacts.ts";
import type { SheetTexts } from "./sheetTexts.ts";

type Element = PDFKit.PDFStructureElement;

const MM = 72 / 25.4;
/** Height of one spindle's row: its code must still be readable at arm's length. */
export const ROW = 24 * MM;

/** Columns: where each begins, from the left edge, and its width. */
const columns = {
  place: { at: 0, width: 8 * MM },
  code: { at: 8 * MM, width: 22 * MM },
  spindle: { at: 31 * MM, width: 38 * MM },
  limits: { at: 70 * MM, width: 31 * MM },
  values: { at: 103 * MM, width: 71 * MM },
} as const;

type Look = {
  readonly size: number;
  readonly bold?: boolean;
  readonly most?: number;
  readonly align?: "right";
  readonly color?: string;
};

/** Text in a column from a height on. @returns  the height below it */
function put(sheet: PdfSheet, text: string, x: number, width: number, y: number, look: Look): number {
  const { size, bold = false, most = 1, align, color } = look;
  let below = y;
  for (const line of sheet.lines(text, { size, weight: bold ? "bold" : "regular" }, width).slice(0, most)) {
    sheet.drawLine(line, { x, y: below, size, align, within: width, ...(color === undefined ? {} : { color }) });
    below += size * LEADING;
  }
  return below;
}

/** The names of the columns. */
export function tableHead(sheet: PdfSheet, table: Element, text: SheetTexts, unit: ForceUnit): void {
  const { y, left } = sheet;
  const row = sheet.tag("TR", {}, table);
  const names = {
    place: text.place,
    code: text.code,
    spindle: text.spindle,
    limits: unit,
    values: `${text.values} (${unit})`,
  };
  for (const [column, { at, width }] of Object.entries(columns)) {
    const cell = sheet.tag("TH", {}, row);
    const words = names[column as keyof typeof columns]; // the keys are those of the literal
    cell.add(() => {
      put(sheet, words, left + at, width, y, { size: 8.5, bold: true });
    });
    cell.end();
  }
  row.end();
  sheet.space(13);
  rule(sheet, 0.8);
  sheet.space(2);
}

/** One spindle. */
export function sheetRow(
  sheet: PdfSheet,
  table: Element,
  stop: StopView,
  { facts, text, tool }: { readonly facts: SheetFacts; readonly text: SheetTexts; readonly tool: string },
): void {
  const { y, left } = sheet;
  const row = sheet.tag("TR", {}, table);
  const cell = (draw: () => void) => {
    const element = sheet.tag("TD", {}, row);
    element.add(draw);
    element.end();
  };
  const { place, code, spindle, limits } = columns;
  cell(() => put(sheet, stop.location ?? "", left + place.at, place.width, y + 4, { size: 14, bold: true }));
  const holder = sheet.tag("TD", {}, row);
  const label = labelCode("spindle", stop.spindleId);
  const side = Math.min(code.width, ROW - 3);
  drawQr(sheet, label, { x: left + code.at, y: y + 1, width: side, height: side }, `QR code ${label}`, holder);
  holder.end();
  cell(() => {
    const x = left + spindle.at;
    let below = put(sheet, stop.name, x, spindle.width, y + 3, { size: 11, bold: true, most: 2 });
    const where = [stop.area, stop.machine === stop.name ? "" : stop.machine].filter((w) => w !== "").join(", ");
    if (where !== "") below = put(sheet, where, x, spindle.width, below, { size: 8.5 });
    put(sheet, `${stop.taper} · ${tool}`, x, spindle.width, below, { size: 8.5, most: 2 });
  });
  cell(() => {
    let below = y + 3;
    const x = left + limits.at;
    for (const [words, forceN] of limitRows(stop, text)) {
      if (forceN === undefined) continue;
      const look = { size: 8.5, bold: words === text.expected };
      put(sheet, words, x, limits.width, below, look);
      below = put(sheet, formatForceFigure(forceN, facts.unit), x, limits.width, below, { ...look, align: "right" });
    }
  });
  boxes(sheet, cell, text);
  row.end();
  sheet.space(ROW - 1);
  rule(sheet, 0.4);
  sheet.space(1);
}

const limitRows = ({ expectedN, limits }: StopView, text: SheetTexts) =>
  [
    [text.expected, expectedN],
    [text.minimum, limits.minimumN],
    [text.warning, limits.warningN],
    [text.nominal, limits.nominalN],
    [text.maximum, limits.maximumN],
  ] as const;

/** Five boxes for values above, one each for time, counter and a remark below. */
function boxes(sheet: PdfSheet, cell: (draw: () => void) => void, text: SheetTexts): void {
  const { y } = sheet;
  const x = sheet.left + columns.values.at;
  const step = columns.values.width / 5;
  const half = (ROW - 8) / 2;
  const lower = [
    { at: x, width: step, words: text.time },
    { at: x + step, width: 1.4 * step, words: text.counter },
    { at: x + 2.4 * step, width: 2.6 * step, words: text.remark },
  ];
  sheet.artifact(() => {
    sheet.doc.lineWidth(0.6);
    for (let i = 0; i < 5; i += 1) sheet.doc.rect(x + i * step, y + 3, step - 3, half - 2).stroke(QUIET);
    for (const { at, width } of lower) sheet.doc.rect(at, y + 3 + half, width - 3, half).stroke(QUIET);
  });
  cell(() => {
    for (const { at, width, words } of lower)
      put(sheet, words, at + 2, width - 6, y + 4 + half, { size: 6.5, color: QUIET });
  });
}

function rule(sheet: PdfSheet, weight: number): void {
  const { doc, left, width, y } = sheet;
  sheet.artifact(() => {
    doc
      .moveTo(left, y)
      .lineTo(left + width, y)
      .lineWidth(weight)
      .stroke(HAIRLINE);
  });
}
