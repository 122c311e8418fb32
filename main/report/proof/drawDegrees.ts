import type { ProofResult } from "../../../app/proof/result/ProofResult.ts";
import { drawTable } from "../pdf/drawTable.ts";
import type { ProofPaper } from "./ProofPaper.ts";

const right = { align: "right" } as const;

/**
 * The degrees that were compared, each with what spoke for going on or not: of a polynomial the probabilities that the next
 * term, or all higher ones together, are no more than scatter; of ASTM E74 by how much the residuals fell and had to fall.
 */
export function drawDegrees(paper: ProofPaper, { degreeTrials, fit }: ProofResult): void {
  const { sheet, write, words, unit, small } = paper;
  const [first] = degreeTrials;
  if (first === undefined || fit === null) return;
  const p = (value: number | null | undefined) =>
    typeof value === "number" && value < 0.001 ? `< ${write.number(0.001, 3)}` : write.number(value, 3);
  const name = (degree: number | null | undefined) => `${degree}${degree === fit.degree ? ` (${words.chosen})` : ""}`;
  sheet.paragraph(words.degrees);
  if ("residualSd" in first) {
    drawTable(
      sheet,
      [
        { title: words.degree, share: 2 },
        { title: `${words.residualSd}, ${unit}`, share: 3, ...right },
        { title: words.fell, share: 3, ...right },
        { title: words.mustFall, share: 3, ...right },
      ],
      degreeTrials.map((t) => [
        name(t.degree),
        small(t.residualSd ?? 0),
        write.digits(t.ratio, 4),
        write.digits(t.factor, 4),
      ]),
    );
    return;
  }
  drawTable(
    sheet,
    [
      { title: words.degree, share: 2 },
      { title: words.pNext, share: 4, ...right },
      { title: words.pHigher, share: 4, ...right },
    ],
    degreeTrials.map((t) => [name(t.degree), p(t.pNext), p(t.pHigher)]),
  );
}
