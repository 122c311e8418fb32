import { gaugeCurveOf } from "../../../app/proof/after/gaugeCurveOf.ts";
import { netReadings } from "../../../app/proof/data/netReadings.ts";
import type { ProofReading } from "../../../app/proof/data/ProofReading.ts";
import { isRefused } from "../../../app/proof/method/ProofOptions.ts";
import type { ProofMethod } from "../../../app/proof/plan/ProofPlan.ts";
import type { Proved } from "../../../app/proof/result/proveReadings.ts";
import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import { methodTexts } from "../../../app/words/proofMethodTexts.ts";
import { proofRemarkWords } from "../../../app/words/proofRemarkWords.ts";
import { drawFacts } from "../pdf/drawFacts.ts";
import { PdfSheet } from "../pdf/PdfSheet.ts";
import { type About, sheetOptions } from "../records/About.ts";
import { drawSignatures } from "./drawSignatures.ts";
import { drawFrame } from "./drawStanding.ts";
import { drawWhole, type Outcome } from "./drawWhole.ts";
import { proofPaper } from "./ProofPaper.ts";
import { proofReportTexts } from "./proofReportTexts.ts";

/** A proof worked out from a file, without records. Readings in newtons. */
export type FileProof = {
  readonly file: string;
  readonly sha256: string;
  readonly method: ProofMethod;
  /** Of the reference: everything is written in it. */
  readonly unit: ForceUnit;
  readonly readings: readonly ProofReading[];
  readonly proved: Proved;
  readonly choices: Outcome["choices"];
};

/** The same tables and charts as a filed proof has, for readings out of a file: of gauge and conditions it knows nothing. */
export async function fileProofReport(about: Omit<About, "db" | "goOn">, from: FileProof): Promise<Buffer> {
  const { write } = about;
  const words = proofReportTexts[write.language];
  const { result } = from.proved;
  const title = words.fileTitle(from.file);
  const sheet = new PdfSheet(sheetOptions(about, title, words.subject, words.notAccredited));
  const paper = proofPaper(sheet, { unit: from.unit, result }, write);
  sheet.title(title, methodTexts[write.language][from.method]);
  drawFrame(paper, null);
  sheet.heading(words.fileWhat);
  drawFacts(
    sheet,
    [
      [words.file, from.file],
      [words.fileHash, from.sha256],
      [words.fileN, String(result.n)],
      [words.fileRuns, [...new Set(netReadings(from.readings).map(({ run }) => run))].join(", ")],
    ],
    1,
  );
  sheet.paragraph(words.fileNames, { quiet: true });
  drawWhole(paper, { ...curveOf(from.proved), choices: from.choices }, result, from.readings);
  sheet.heading(words.remarks);
  for (const remark of result.remarks) sheet.paragraph(proofRemarkWords(remark, write.speech));
  sheet.paragraph(words.onlyThese);
  drawSignatures(paper);
  return sheet.finish();
}

function curveOf({ curve }: Proved): Omit<Outcome, "choices"> {
  const made = curve === undefined ? undefined : gaugeCurveOf(curve, { reference: "N", indication: "N" }, 1);
  if (made === undefined) return { curve: null, curveRefused: null, curveTaken: null };
  return isRefused(made)
    ? { curve: null, curveRefused: made.refused, curveRefusedWhy: made.why, curveTaken: null }
    : { curve: made, curveRefused: null, curveTaken: null };
}
