import type { Validation, ValidationCase } from "../../app/contract/reportViews.ts";
import type { Language } from "../../app/words/Language.ts";
import { drawFacts } from "./pdf/drawFacts.ts";
import { drawTable } from "./pdf/drawTable.ts";
import { type Paper, PdfSheet } from "./pdf/PdfSheet.ts";
import { reportTexts } from "./records/reportTexts.ts";
import { validationTexts } from "./validationTexts.ts";

/** The validation of an installed program on paper. @param notRun  published files without a case here, named for honesty */
export async function validationReport(
  { program, programHash, runtime, madeAt, cases, failed }: Validation,
  notRun: readonly string[],
  { paper, language }: { readonly paper: Paper; readonly language: Language },
): Promise<Buffer> {
  const words = validationTexts[language];
  const title = words.title(program);
  const sheet = new PdfSheet({
    title,
    subject: words.subject,
    paper,
    nowMs: Date.parse(madeAt),
    language,
    footer: words.foot(program, madeAt, programHash ?? words.notAtHand),
    pageWords: reportTexts[language].page,
  });
  sheet.title(title, words.under);
  const verdict = failed.length === 0 ? words.passed(cases.length) : words.failed(failed.length, cases.length);
  sheet.text("H2", verdict, { size: 16, weight: "bold" });
  if (failed.length > 0) sheet.paragraph(words.doNotUse, { bold: true });
  drawFacts(
    sheet,
    [
      [words.program, `Holdfast ${program}`],
      [words.core, programHash ?? words.noSources],
      [words.runtime, runtime],
      [words.at, madeAt],
    ],
    1,
  );
  sheet.paragraph(words.shows);
  if (notRun.length > 0) sheet.paragraph(words.notRun(notRun.join(", ")), { quiet: true, size: 9 });
  for (const [file, group] of Map.groupBy(cases, (one) => one.id.split("/")[0]!))
    drawGroup(sheet, file, group, language);
  return sheet.finish();
}

/** The cases of one published file; their source stands over them where all have the same. */
function drawGroup(sheet: PdfSheet, file: string, cases: readonly ValidationCase[], language: Language): void {
  const words = validationTexts[language];
  const sources = new Set(cases.map((one) => one.source));
  sheet.heading(file);
  if (sources.size === 1) sheet.paragraph([...sources][0]!, { quiet: true, size: 9 });
  drawTable(
    sheet,
    [
      { title: "", share: 0.7, align: "right" },
      { title: words.what, share: 4 },
      { title: words.expected, share: 2.6 },
      { title: words.got, share: 2.6 },
      { title: words.within, share: 1.2 },
      { title: "", share: 0.8 },
    ],
    cases.map(({ id, what, source, expected, got, within, pass }) => [
      id.split("/")[1]!,
      sources.size === 1 ? what : `${what}\n${source}`,
      expected,
      got,
      within,
      pass ? words.pass : words.FAIL,
    ]),
  );
}
