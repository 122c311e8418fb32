import type { ProofPage } from "../../../app/contract/proofViews.ts";
import { proofRemarkWords } from "../../../app/words/proofRemarkWords.ts";
import type { ProofPaper } from "./ProofPaper.ts";

/** Everything a reader has to know beside the figures. */
export function drawRemarks({ sheet, write, words }: ProofPaper, { proof }: ProofPage): void {
  const { problems, pauses, result, clockDoubtful, offsetMinutes } = proof;
  sheet.heading(words.remarks);
  for (const { code, about = "", overriddenWith = "" } of problems) {
    if (code === "referencePastDue") sheet.paragraph(words.pastDue(plainDay(about, write.plainDay)), { bold: true });
    if (code === "skipped") sheet.paragraph(words.skipped(String(Number(about) + 1), overriddenWith));
  }
  for (const remark of result?.remarks ?? [])
    if (remark.code !== "tableFromMemory" || result?.class === null)
      sheet.paragraph(proofRemarkWords(remark, write.speech));
  for (const { at, reason } of pauses) {
    const why = reason === "linkLost" || reason === "referenceLinkLost" ? words[reason] : reason;
    sheet.paragraph(words.paused(write.wallTime(Date.parse(at), offsetMinutes), why));
  }
  if (clockDoubtful) sheet.paragraph(words.clock);
  sheet.paragraph(words.onlyThese);
}

const plainDay = (text: string, write: (day: string) => string) =>
  /^\d{4}-\d\d-\d\d$/.test(text) ? write(text) : text;
