import type { StopView } from "../../../app/contract/roundViews.ts";
import { framed } from "../pdf/framed.ts";
import { LEADING, type Paper, PdfSheet } from "../pdf/PdfSheet.ts";
import type { SheetFacts } from "./sheetFacts.ts";
import { ROW, sheetRow, tableHead } from "./sheetRow.ts";
import { type SheetTexts, sheetTexts } from "./sheetTexts.ts";

/**
 * A round on paper: what to take along and to mind, then each spindle in walking order with its label, what is expected, its
 * limits and boxes to write in; a bar where the adapter changes. Tagged, so that it can be read aloud.
 * @param nowMs  when it is printed
 */
export async function roundSheet(
  facts: SheetFacts,
  language: "en" | "de",
  made: { readonly version: string; readonly nowMs: number; readonly paper: Paper },
): Promise<Uint8Array> {
  const text = sheetTexts[language];
  const { round } = facts;
  const sheet = new PdfSheet({
    title: `${text.title}: ${round.name}`,
    subject: `${facts.worksName}, ${round.on}`,
    paper: made.paper,
    nowMs: made.nowMs,
    language,
    footer: `${facts.worksName} · ${round.name} · ${round.on} · Holdfast ${made.version}`,
    pageWords: text.page,
  });
  head(sheet, facts, text);
  cautions(sheet, text);
  let table = sheet.tag("Table");
  tableHead(sheet, table, text, facts.unit);
  let tool: string | undefined;
  for (const [i, stop] of round.stops.entries()) {
    const next = toolOf(facts, stop);
    const bar = i > 0 && next !== tool;
    if (sheet.y + ROW + (bar ? BAR : 0) > sheet.bottom) {
      table.end();
      sheet.newPage();
      table = sheet.tag("Table");
      tableHead(sheet, table, text, facts.unit);
    }
    if (bar) changeBar(sheet, table, `${text.change}: ${next}`);
    tool = next;
    sheetRow(sheet, table, stop, { facts, text, tool: next });
  }
  table.end();
  return sheet.finish();
}

const toolOf = (facts: SheetFacts, stop: StopView) => facts.adapterName(stop) ?? stop.taper;

function head(sheet: PdfSheet, facts: SheetFacts, text: SheetTexts): void {
  const { round } = facts;
  sheet.title(
    `${text.title}: ${round.name}`,
    `${facts.worksName} · ${round.on} · ${text.walk(round.adapterChanges, round.stops.length)}`,
  );
  sheet.paragraph(`${text.gauge}: ${facts.gaugeName ?? text.open} · ${text.operator}: ${facts.operator ?? text.open}`);
  sheet.heading(text.takeAlong);
  if (facts.adapters.length > 0) sheet.paragraph(`${text.adapters}: ${facts.adapters.join(", ")}.`);
  if (facts.withoutAdapter.length > 0)
    sheet.paragraph(`${text.noAdapter}: ${facts.withoutAdapter.join(", ")}.`, { bold: true });
  sheet.paragraph(`${text.things}.`);
  sheet.paragraph(text.found[round.found], { quiet: true });
  if (round.note !== "") sheet.paragraph(round.note);
}

/** In a frame, where the hand is about to act. */
function cautions(sheet: PdfSheet, text: SheetTexts): void {
  const inside = { x: sheet.left + 8, width: sheet.width - 16 };
  const put = (
    type: "H2" | "LI",
    words: string,
    size: number,
    weight: "bold" | "regular",
    under?: PDFKit.PDFStructureElement,
  ) => {
    const element = sheet.tag(type, {}, under);
    element.add(() => {
      for (const line of sheet.lines(words, { size, weight }, inside.width)) {
        sheet.drawLine(line, { x: inside.x, y: sheet.y, size });
        sheet.y += size * LEADING;
      }
    });
    element.end();
  };
  sheet.space(6);
  sheet.need(120);
  framed(sheet, () => {
    put("H2", text.careTitle, 10.5, "bold");
    const list = sheet.tag("L");
    for (const line of text.care) put("LI", line, 9, "regular", list);
    list.end();
  });
  sheet.space(10);
}

const BAR = 18;

function changeBar(sheet: PdfSheet, table: PDFKit.PDFStructureElement, words: string): void {
  const { y } = sheet;
  sheet.artifact(() => {
    sheet.doc.rect(sheet.left, y, sheet.width, BAR - 2).fill("#e2e2e2");
  });
  const row = sheet.tag("TR", {}, table);
  const cell = sheet.tag("TD", {}, row);
  const [line] = sheet.lines(words, { size: 10, weight: "bold" }, sheet.width - 12);
  cell.add(() => sheet.drawLine(line!, { x: sheet.left + 6, y: y + 2, size: 10 })); // a text has a first line
  cell.end();
  row.end();
  sheet.space(BAR);
}
