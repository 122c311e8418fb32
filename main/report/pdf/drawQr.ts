import QRCode from "qrcode";
import type { Box, PdfSheet } from "./PdfSheet.ts";

/** Light modules that must stand around a code (ISO/IEC 18004). */
const QUIET = 4;

/** A QR code in a box, its quiet zone inside it, tagged as a figure. @param alt  what it is, for who cannot see it */
export function drawQr(sheet: PdfSheet, text: string, box: Box, alt: string, under?: PDFKit.PDFStructureElement): void {
  const figure = sheet.tag("Figure", { alt }, under);
  figure.add(() => qrSquares(sheet.doc, text, box));
  figure.end();
}

/** The squares of a code alone. */
export function qrSquares(doc: PDFKit.PDFDocument, text: string, { x, y, width, height }: Box): void {
  const { modules } = QRCode.create(text, { errorCorrectionLevel: "M" });
  const step = Math.min(width, height) / (modules.size + 2 * QUIET);
  for (let row = 0; row < modules.size; row += 1) {
    for (let column = 0; column < modules.size; ) {
      // Neighbours in a row are one rectangle: no hairlines between them, and a third of the file.
      let end = column;
      while (end < modules.size && modules.get(row, end)) end += 1;
      if (end > column) doc.rect(x + (QUIET + column) * step, y + (QUIET + row) * step, (end - column) * step, step);
      column = Math.max(end, column + 1);
    }
  }
  doc.fill("#000000");
}
