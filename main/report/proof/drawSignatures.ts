import { HAIRLINE, QUIET } from "../pdf/PdfSheet.ts";
import type { ProofPaper } from "./ProofPaper.ts";

/** Two lines to be signed by hand. */
export function drawSignatures({ sheet, words }: ProofPaper): void {
  sheet.need(50);
  sheet.space(30);
  const width = (sheet.width - 30) / 2;
  const { y } = sheet;
  sheet.artifact(() => {
    for (const i of [0, 1])
      sheet.doc
        .moveTo(sheet.left + i * (width + 30), y)
        .lineTo(sheet.left + i * (width + 30) + width, y)
        .lineWidth(0.6)
        .stroke(HAIRLINE);
  });
  const element = sheet.tag("P");
  element.add(() => {
    for (const [i, text] of [words.signed, words.approved].entries()) {
      const [line] = sheet.lines(text, { size: 8.5, weight: "regular" }, width);
      sheet.drawLine(line!, { x: sheet.left + i * (width + 30), y: y + 3, size: 8.5, color: QUIET }); // a text has a first line
    }
  });
  element.end();
  sheet.space(18);
}
