import PDFDocument from "pdfkit";
import type { Language } from "../../../app/words/Language.ts";
import { qrSquares } from "../pdf/drawQr.ts";
import { layLines } from "../pdf/layLines.ts";
import { SheetFonts, type Weight } from "../pdf/SheetFonts.ts";
import type { Label } from "./labelsOf.ts";

const MM = 72 / 25.4;

/** Sheets of A4 with so many labels, in millimetres: sizes that label paper is sold in (common practice, no source). */
export const labelSizes = {
  small: { columns: 5, rows: 13, width: 38.1, height: 21.2, left: 9.75, top: 10.7, gap: 0, letters: 7 },
  medium: { columns: 3, rows: 8, width: 70, height: 37, left: 0, top: 0.5, gap: 0, letters: 11 },
  large: { columns: 2, rows: 4, width: 99.1, height: 67.7, left: 4.65, top: 13.1, gap: 2.5, letters: 16 },
} as const;

export type LabelSize = keyof typeof labelSizes;

const titles: Readonly<Record<Language, string>> = { en: "Labels", de: "Aufkleber" };

/**
 * Labels on sheets, row by row, each a code beside its name. No foot and no margin: the paper is cut already.
 * @param skip  places of the first sheet that are used already
 * @param language  the document says it is in: names are as they were given
 */
export async function labelSheet(
  labels: readonly Label[],
  size: LabelSize,
  skip: number,
  language: Language,
): Promise<Uint8Array> {
  const { columns, rows, width, height, left, top, gap } = labelSizes[size];
  const doc = new PDFDocument({
    size: "A4",
    margin: 0,
    autoFirstPage: false,
    tagged: true,
    displayTitle: true,
    lang: language,
    pdfVersion: "1.7",
    subset: "PDF/A-2a",
    info: { Title: titles[language], Creator: "Holdfast", Producer: "Holdfast" },
  });
  const done = collected(doc);
  const fonts = new SheetFonts(doc);
  const root = doc.struct("Document");
  doc.addStructure(root);
  const from = skip % (columns * rows);
  for (const [i, label] of labels.entries()) {
    const at = (i + from) % (columns * rows);
    if (i === 0 || at === 0) doc.addPage();
    const x = (left + (at % columns) * (width + gap)) * MM;
    const y = (top + Math.floor(at / columns) * height) * MM;
    draw(doc, fonts, root, label, { x, y, width: width * MM, height: height * MM }, labelSizes[size].letters);
  }
  root.end();
  doc.end();
  return done;
}

type Place = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

function draw(
  doc: PDFKit.PDFDocument,
  fonts: SheetFonts,
  root: PDFKit.PDFStructureElement,
  label: Label,
  { x, y, width, height }: Place,
  letters: number,
): void {
  const pad = Math.min(2 * MM, height * 0.07);
  const side = Math.min(height - 2 * pad, width * 0.5);
  const figure = doc.struct("Figure", { alt: `QR code ${label.code}` });
  root.add(figure);
  figure.add(() => qrSquares(doc, label.code, { x: x + pad, y: y + (height - side) / 2, width: side, height: side }));
  figure.end();
  const paragraph = doc.struct("P");
  root.add(paragraph);
  paragraph.add(() => {
    let below = y + pad + 2;
    const put = (text: string, size: number, weight: Weight, most: number) => {
      for (const line of layLines(fonts, text, { size, weight }, width - side - 3 * pad).slice(0, most)) {
        let at = x + side + 1.5 * pad;
        for (const run of line.runs) {
          doc.fillColor("#000000").font(run.font).fontSize(size).text(run.text, at, below, { lineBreak: false });
          at += run.width;
        }
        below += size * 1.2;
      }
    };
    put(label.name, letters, "bold", 2);
    for (const line of label.lines.filter((l) => l !== "")) put(line, letters * 0.8, "regular", 1);
  });
  paragraph.end();
}

function collected(doc: PDFKit.PDFDocument): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  return new Promise((done, fail) => {
    doc.on("data", (chunk: Buffer) => chunks.push(chunk));
    doc.on("end", () => done(Buffer.concat(chunks)));
    doc.on("error", fail);
  });
}
