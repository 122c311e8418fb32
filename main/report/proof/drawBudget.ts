import type { ProofResult } from "../../../app/proof/result/ProofResult.ts";
import { proofSources } from "../../../app/proof/uncertainty/StepUncertainty.ts";
import { proofSourceTexts } from "../../../app/words/proofSourceTexts.ts";
import { drawTable } from "../pdf/drawTable.ts";
import { type ProofPaper, together } from "./ProofPaper.ts";

/** The whole budget, a line a step and a column a source; what the columns are stands under it. */
export function drawBudget({ sheet, write, words, unit, figure, fine }: ProofPaper, { steps }: ProofResult): void {
  const found = proofSources.filter((source) =>
    steps.some(({ uncertainty }) => uncertainty.contributions.some((c) => c.source === source)),
  );
  const right = { align: "right" } as const;
  sheet.heading(words.budget, together(steps.length));
  sheet.paragraph(words.budgetWhy("N"), { quiet: true, size: 9 });
  drawTable(
    sheet,
    [
      { title: words.ref(unit), share: 1.5, ...right },
      ...found.map((_, i) => ({ title: `u${i + 1}`, share: 1, ...right })),
      { title: "u", share: 1, ...right },
      { title: words.freedom, share: 1, ...right },
      { title: "k", share: 0.8, ...right },
      { title: "U", share: 1, ...right },
    ],
    steps.map(({ referenceN, uncertainty }) => {
      const { contributions, standardN, degreesOfFreedom, coverageFactor, expandedN } = uncertainty;
      return [
        figure(referenceN),
        ...found.map((source) => {
          const lines = contributions.filter((c) => c.source === source);
          return lines.length === 0 ? "–" : fine(Math.hypot(...lines.map((c) => c.standardN)));
        }),
        fine(standardN),
        degreesOfFreedom === null || degreesOfFreedom > 1000 ? "> 1000" : write.number(degreesOfFreedom, 0),
        write.number(coverageFactor, 2),
        fine(expandedN),
      ];
    }),
  );
  const named = found.map((source, i) => `u${i + 1} ${proofSourceTexts[write.language][source]}`);
  sheet.paragraph(`${named.join("; ")}.`, { quiet: true, size: 9 });
}
