import type { PdfSheet } from "./PdfSheet.ts";

/** Draws a frame about what `fill` writes, over the sheet's whole width; room for it is asked for before. */
export function framed(sheet: PdfSheet, fill: () => void): void {
  const top = sheet.y;
  sheet.space(5);
  fill();
  sheet.space(4);
  sheet.artifact(() => {
    sheet.doc
      .lineWidth(1.2)
      .rect(sheet.left, top, sheet.width, sheet.y - top)
      .stroke("#000000");
  });
}
