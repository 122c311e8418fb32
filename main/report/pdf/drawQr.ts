import QRCode from "qrcode";
import type { Pdf } from "./startPdf.ts";

/** Light modules that must stand around a code (ISO/IEC 18004). */
const QUIET = 4;

/** A QR code as filled squares, its quiet zone inside the side given. */
export function drawQr(doc: Pdf, text: string, x: number, y: number, side: number): void {
  const { modules } = QRCode.create(text, { errorCorrectionLevel: "M" });
  const step = side / (modules.size + 2 * QUIET);
  doc.fillColor("#000000");
  for (let row = 0; row < modules.size; row += 1) {
    for (let column = 0; column < modules.size; ) {
      // Neighbours in a row are one rectangle: no hairlines between them, and a third of the file.
      let end = column;
      while (end < modules.size && modules.get(row, end)) end += 1;
      if (end > column) doc.rect(x + (QUIET + column) * step, y + (QUIET + row) * step, (end - column) * step, step);
      column = Math.max(end, column + 1);
    }
  }
  doc.fill();
}
