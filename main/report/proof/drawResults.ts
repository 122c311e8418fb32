import type { Proof } from "../../../app/ledger/proof.ts";
import type { ProofResult, ProofStepResult } from "../../../app/proof/result/ProofResult.ts";
import { proofRemarkWords } from "../../../app/words/proofRemarkWords.ts";
import { ruleSentences, ruleTexts } from "../../../app/words/recordTexts.ts";
import { drawFacts } from "../pdf/drawFacts.ts";
import { drawTable, type TableColumn } from "../pdf/drawTable.ts";
import { checkReportTexts } from "../records/checkReportTexts.ts";
import { type ProofPaper, together } from "./ProofPaper.ts";

/** A column of a table of steps: its head, width and figure. */
type Column = TableColumn & { readonly cell: (step: ProofStepResult) => string };

const right = { align: "right" } as const;

function stepTable(
  { sheet, words, unit, figure }: ProofPaper,
  steps: readonly ProofStepResult[],
  more: readonly Column[],
) {
  const columns: Column[] = [
    { title: words.ref(unit), share: 1.4, ...right, cell: (step) => figure(step.referenceN) },
    ...more,
  ];
  drawTable(
    sheet,
    columns,
    steps.map((step) => columns.map(({ cell }) => cell(step))),
  );
}

/** Results by step with their expanded uncertainty and coverage factor. */
export function drawSteps(paper: ProofPaper, result: ProofResult): void {
  const { sheet, write, words, unit, figure, pct, small } = paper;
  const hasCurve = result.steps.some((step) => step.fittedN !== null);
  const curve: Column[] = [
    { title: words.curveAt(unit), share: 1.25, ...right, cell: (step) => figure(step.fittedN) },
    { title: words.residualIn(unit), share: 1.2, ...right, cell: (step) => figure(step.residualN) },
  ];
  sheet.heading(words.results, together(result.steps.length));
  sheet.paragraph(words.coverage(write.percent(result.coverage, 0)), { quiet: true, size: 9 });
  stepTable(paper, result.steps, [
    { title: words.n, share: 0.6, ...right, cell: (step) => String(step.n) },
    { title: words.net(unit), share: 1.25, ...right, cell: (step) => figure(step.netN) },
    ...(hasCurve ? curve : []),
    { title: words.errorIn(unit), share: 1.2, ...right, cell: (step) => figure(step.errorN) },
    {
      title: words.errorPct,
      share: 1,
      ...right,
      cell: (step) => pct(step.referenceN === 0 ? null : (100 * step.errorN) / step.referenceN),
    },
    { title: `U, ${unit}`, share: 1.1, ...right, cell: (step) => small(step.uncertainty.expandedN) },
    { title: words.uPct, share: 0.95, ...right, cell: (step) => pct(step.uncertainty.expandedPct) },
    { title: "k", share: 0.7, ...right, cell: (step) => write.number(step.uncertainty.coverageFactor, 2) },
  ]);
  const { zeroPct, creepPct } = result;
  if (zeroPct !== null) sheet.paragraph(words.zero(pct(zeroPct)));
  if (creepPct !== null) sheet.paragraph(words.creep(pct(creepPct)));
}

/** Class and relative errors, or why there is none; beside them that limits from memory must be checked. */
export function drawClass(paper: ProofPaper, result: ProofResult): void {
  const { sheet, write, words, force, pct, className } = paper;
  if (result.missing.every(({ code }) => code === "noClassInMethod") && result.class === null) return;
  const hasErrors = result.steps.some((step) => step.b !== null || step.fc !== null);
  sheet.heading(words.classTitle, hasErrors ? 70 + together(result.steps.length) : 60);
  if (result.remarks.some(({ code }) => code === "tableFromMemory"))
    sheet.paragraph(words.checkEdition, { bold: true });
  if (result.class === null) {
    sheet.paragraph(`${words.noClass}:`, { bold: true });
    for (const remark of result.missing) sheet.paragraph(proofRemarkWords(remark, write.speech));
  }
  for (const range of result.classRanges)
    sheet.paragraph(words.classRange(className(range.class), force(range.fromN), force(range.toN)));
  if (result.lowerLimitFactorN !== null && result.lowerLimitsN !== null)
    sheet.paragraph(
      words.llf(force(result.lowerLimitFactorN), force(result.lowerLimitsN.AA), force(result.lowerLimitsN.A)),
    );
  if (!hasErrors) return;
  sheet.paragraph(words.relativeWhy, { quiet: true, size: 9 });
  stepTable(paper, result.steps, [
    { title: "b", share: 1, ...right, cell: (step) => pct(step.b) },
    { title: "b'", share: 1, ...right, cell: (step) => pct(step.bPrime) },
    { title: "fc", share: 1, ...right, cell: (step) => pct(step.fc) },
    { title: "v", share: 1, ...right, cell: (step) => pct(step.v) },
    { title: words.guideU, share: 1.6, ...right, cell: (step) => pct(step.uncertainty.guideExpandedPct) },
    { title: words.class, share: 1, ...right, cell: (step) => (step.class === null ? "–" : className(step.class)) },
  ]);
}

/** The statement of conformity with its rule; where none is made, that none is. */
export function drawConformity(
  paper: ProofPaper,
  choices: Pick<Proof["choices"], "mpe" | "rule">,
  result: ProofResult,
): void {
  const { sheet, write, words, unit, figure, small } = paper;
  const { mpe, rule } = choices;
  sheet.heading(words.conformityTitle, mpe === null ? 20 : 70 + together(result.steps.length));
  if (mpe === null) {
    sheet.paragraph(words.noStatement);
    return;
  }
  const said = checkReportTexts[write.language];
  const answer = (conformity: ProofStepResult["conformity"]) =>
    conformity === null ? "–" : said[`conformity.${conformity}`];
  const name = rule?.rule ?? "guarded";
  const permitted =
    mpe.kind === "absolute" ? paper.chosen(mpe.force) : words[`mpe.${mpe.kind}`](write.percent(mpe.fraction, 2));
  const factors = [
    rule?.coverageFactor === undefined ? "" : `k = ${write.digits(rule.coverageFactor)}`,
    rule?.guardFactor === undefined ? "" : said.guardFactor(write.digits(rule.guardFactor)),
    rule?.threshold === undefined ? "" : said.threshold(write.percent(rule.threshold)),
  ].filter((part) => part !== "");
  drawFacts(
    sheet,
    [
      [words.mpe, permitted],
      [words.rule, [ruleTexts[write.language][name], ...factors].join(", ")],
      [words.overall, answer(result.conformity)],
    ],
    1,
  );
  sheet.paragraph(ruleSentences[write.language][name], { quiet: true, size: 9 });
  stepTable(paper, result.steps, [
    { title: words.errorIn(unit), share: 1.2, ...right, cell: (step) => figure(step.errorN) },
    { title: `U, ${unit}`, share: 1.2, ...right, cell: (step) => small(step.uncertainty.expandedN) },
    { title: words.allowedIn(unit), share: 1.3, ...right, cell: (step) => figure(step.permissibleN) },
    { title: words.odds, share: 1.4, ...right, cell: (step) => write.odds(step.probabilityConforming) },
    {
      title: words.statement,
      share: 2.2,
      cell: ({ conformity, zone }) =>
        zone === null ? answer(conformity) : `${answer(conformity)} (${said[`zone.${zone}`]})`,
    },
  ]);
}
