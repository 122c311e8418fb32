import type { Validation, ValidationCase } from "../../app/contract/reportViews.ts";
import { drawFacts } from "./pdf/drawFacts.ts";
import { drawTable } from "./pdf/drawTable.ts";
import { type Paper, PdfSheet } from "./pdf/PdfSheet.ts";

/** The validation of an installed program on paper. @param notRun  published files without a case here, named for honesty */
export async function validationReport(
  { program, programHash, runtime, madeAt, cases, failed }: Validation,
  notRun: readonly string[],
  paper: Paper,
): Promise<Buffer> {
  const title = `Validation of Holdfast ${program}`;
  const sheet = new PdfSheet({
    title,
    subject: "Published checks run on an installed program",
    paper,
    nowMs: Date.parse(madeAt),
    footer: `Holdfast ${program}, run ${madeAt}\nmeasuring core SHA-256 ${programHash ?? "not at hand"}`,
  });
  sheet.title(title, "The published checks run on this installation (ISO/IEC 17025:2017, 7.11.2)");
  const verdict =
    failed.length === 0 ? `All ${cases.length} cases passed` : `${failed.length} of ${cases.length} cases FAILED`;
  sheet.text("H2", verdict, { size: 16, weight: "bold" });
  if (failed.length > 0)
    sheet.paragraph("Do not use this installation for results that count until the cause is known.", { bold: true });
  drawFacts(
    sheet,
    [
      ["program", `Holdfast ${program}`],
      ["measuring core", programHash ?? "its sources are not beside the program"],
      ["runs on", runtime],
      ["run at", madeAt],
    ],
    1,
  );
  sheet.paragraph(
    "It shows that this installation computes what the sources print. It says nothing of the gauge, the adapter or the " +
      "way of measuring, and is no accredited certificate.",
  );
  if (notRun.length > 0)
    sheet.paragraph(`Without a case here, tested where the program is built: ${notRun.join(", ")}.`, {
      quiet: true,
      size: 9,
    });
  for (const [file, group] of Map.groupBy(cases, (one) => one.id.split("/")[0]!)) drawGroup(sheet, file, group);
  return sheet.finish();
}

/** The cases of one published file; their source stands over them where all have the same. */
function drawGroup(sheet: PdfSheet, file: string, cases: readonly ValidationCase[]): void {
  const sources = new Set(cases.map((one) => one.source));
  sheet.heading(file);
  if (sources.size === 1) sheet.paragraph([...sources][0]!, { quiet: true, size: 9 });
  drawTable(
    sheet,
    [
      { title: "", share: 0.7, align: "right" },
      { title: "what", share: 4 },
      { title: "expected", share: 2.6 },
      { title: "got", share: 2.6 },
      { title: "within", share: 1.2 },
      { title: "", share: 0.8 },
    ],
    cases.map(({ id, what, source, expected, got, within, pass }) => [
      id.split("/")[1]!,
      sources.size === 1 ? what : `${what}\n${source}`,
      expected,
      got,
      within,
      pass ? "pass" : "FAIL",
    ]),
  );
}
