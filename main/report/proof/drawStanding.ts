import type { ProofPage } from "../../../app/contract/proofViews.ts";
import { framed } from "../pdf/framed.ts";
import { LEADING } from "../pdf/PdfSheet.ts";
import { answerOf } from "./drawPair.ts";
import type { ProofPaper } from "./ProofPaper.ts";

/** The answer in one line, and what this paper is: no accredited certificate, or what the laboratory says of itself. */
export function drawStanding(paper: ProofPaper, { proof, row }: ProofPage): void {
  const { sheet, words, pct } = paper;
  const most = row.worstPct === undefined ? "" : `: ${words.atMost(`${pct(row.worstPct)} %`)}`;
  sheet.text("H2", `${answerOf(proof, paper)}${most}`, { size: 14, weight: "bold" });
  drawFrame(paper, proof.accreditation);
}

/** What this paper is, in a frame. @param accreditation  null: none is stated */
export function drawFrame({ sheet, words }: ProofPaper, accreditation: string | null): void {
  sheet.space(4);
  const [head, body] =
    accreditation === null ? [words.notAccredited, words.notAccreditedWhy] : [words.accreditation, accreditation];
  const inside = { x: sheet.left + 8, width: sheet.width - 16 };
  const lines = [
    ...sheet.lines(head, { size: 11, weight: "bold" }, inside.width).map((line) => ({ line, size: 11 })),
    ...sheet.lines(body, { size: 9, weight: "regular" }, inside.width).map((line) => ({ line, size: 9 })),
  ];
  sheet.need(lines.reduce((sum, { size }) => sum + size * LEADING, 12));
  framed(sheet, () => {
    const element = sheet.tag("P");
    element.add(() => {
      for (const { line, size } of lines) {
        sheet.drawLine(line, { x: inside.x, y: sheet.y, size });
        sheet.y += size * LEADING;
      }
    });
    element.end();
  });
  sheet.space(2);
}
