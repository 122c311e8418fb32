import PDFDocument from "pdfkit";
import { reportFonts } from "./fonts.ts";

export type Pdf = PDFKit.PDFDocument;

/** One millimetre in points. */
export const mm = 72 / 25.4;
export const A4 = { width: 210 * mm, height: 297 * mm };

export type PdfOptions = {
  readonly title: string;
  readonly language: "en" | "de";
  /** Of the file's information; the same content with the same date gives the same pages. */
  readonly madeMs?: number | undefined;
};

/** An empty tagged document (PDF/A-3a) with our fonts in it; pages are added by whoever fills it. */
export function startPdf({ title, language, madeMs }: PdfOptions): Pdf {
  const doc = new PDFDocument({
    size: "A4",
    margin: 0,
    autoFirstPage: false,
    tagged: true,
    pdfVersion: "1.7",
    subset: "PDF/A-3a",
    lang: language === "de" ? "de-DE" : "en-GB",
    displayTitle: true,
    bufferPages: true,
    font: undefined as unknown as string, // no standard font: every font is embedded
    info: {
      Title: title,
      Creator: "Holdfast",
      Producer: "Holdfast",
      ...(madeMs === undefined ? {} : { CreationDate: new Date(madeMs) }),
    },
  });
  for (const [name, bytes] of Object.entries(reportFonts())) doc.registerFont(name, bytes);
  return doc.font("plain");
}

/** Ends the document and answers its bytes. */
export function finishPdf(doc: Pdf): Promise<Uint8Array> {
  const parts: Buffer[] = [];
  return new Promise((done, fail) => {
    doc.on("data", (part: Buffer) => parts.push(part));
    doc.once("end", () => done(Buffer.concat(parts)));
    doc.once("error", fail);
    doc.end();
  });
}
