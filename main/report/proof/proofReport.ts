import type { ProofPage } from "../../../app/contract/proofViews.ts";
import { methodTexts } from "../../../app/words/proofMethodTexts.ts";
import { proofRefusalWords } from "../../../app/words/proofRefusalWords.ts";
import { proofPage } from "../../proofs/proofViews.ts";
import { StoreError } from "../../store/StoreError.ts";
import { PdfSheet } from "../pdf/PdfSheet.ts";
import { type About, sheetOptions } from "../records/About.ts";
import { initials } from "../records/correctionsOf.ts";
import { drawProof } from "../records/drawProof.ts";
import { reportTexts } from "../records/reportTexts.ts";
import { asReading } from "./asReading.ts";
import { answerOf, drawPair } from "./drawPair.ts";
import { drawReadings } from "./drawReadings.ts";
import { drawRemarks } from "./drawRemarks.ts";
import { drawSignatures } from "./drawSignatures.ts";
import { drawStanding } from "./drawStanding.ts";
import { drawWhole } from "./drawWhole.ts";
import { type ProofPaper, proofPaper } from "./ProofPaper.ts";
import { drawMethod, drawSubject, drawTrace } from "./proofFacts.ts";
import { proofReportTexts } from "./proofReportTexts.ts";

/**
 * A filed proof for a laboratory's reader.
 * @throws StoreError  `notFound`
 * @see ISO/IEC 17025:2017, 7.8.2 and 7.8.4: what a report of a calibration names (from memory)
 */
export async function proofReport(about: About, proofId: string): Promise<Buffer> {
  const { db, write } = about;
  const page = proofPage(db, proofId);
  if (page === undefined) throw new StoreError("notFound", "There is no such proof in this data file.");
  const words = proofReportTexts[write.language];
  const { proof } = page;
  const title = words.title(proof.gauge.name);
  const standing = proof.accreditation === null ? words.notAccredited : words.accreditedFoot;
  const sheet = new PdfSheet(sheetOptions(about, `${title}, ${write.plainDay(proof.on)}`, words.subject, standing));
  const paper = proofPaper(sheet, proof, write);
  const method = methodTexts[write.language][proof.plan.method];
  sheet.title(title, [method, words[`as.${proof.as}`], write.plainDay(proof.on)].join(", "));
  drawStanding(paper, page);
  drawSubject(paper, page, initials(db, proof.operatorId, write));
  drawMethod(paper, page);
  drawTrace(paper, page);
  drawOutcome(paper, page);
  drawPair(paper, page, initials(db, page.adjustment?.operatorId, write));
  drawRemarks(paper, page);
  drawSignatures(paper);
  drawReadings(paper, page);
  drawProof(sheet, about, `proof ${proofId} entry ${page.origin}/${page.seq} ${page.hash}`, [
    [words.thisProof, proofId],
    [reportTexts[write.language].its, reportTexts[write.language].entryOf(page.seq, page.origin)],
    [reportTexts[write.language].itsHash, page.hash],
  ]);
  return sheet.finish();
}

function drawOutcome(paper: ProofPaper, page: ProofPage): void {
  const { sheet, words } = paper;
  const { result, refused: said, refusedWhy: why } = page.proof;
  if (result === null) {
    sheet.heading(words.results);
    const because = said === null ? answerOf(page.proof, paper) : proofRefusalWords({ said, why }, paper.write.speech);
    sheet.paragraph(words.refused(because), { bold: true });
    return;
  }
  const readings = page.proof.takings.filter(({ replaced }) => replaced === null).map(asReading);
  drawWhole(paper, page.proof, result, readings);
}
