import type { ProofPage } from "../../../app/contract/proofViews.ts";
import type { Proof } from "../../../app/ledger/proof.ts";
import { drawTable } from "../pdf/drawTable.ts";
import type { ProofPaper } from "./ProofPaper.ts";

/** As found and as left side by side, and the adjustment between; what the gauge did since the proofs before. @param by  who adjusted */
export function drawPair(paper: ProofPaper, page: ProofPage, by: string | undefined): void {
  const { sheet, write, words } = paper;
  const { proof, other, adjustment } = page;
  sheet.heading(words.foundLeft);
  if (other === undefined) sheet.paragraph(proof.as === "found" ? words.alone : words.aloneLeft);
  if (adjustment !== undefined) {
    const when = write.wallTime(Date.parse(adjustment.at), adjustment.offsetMinutes);
    sheet.paragraph(words.between(when, adjustment.what.replace(/\.$/, ""), by === undefined ? "" : `; ${by}`));
  }
  const pair = [proof, ...(other === undefined ? [] : [other])].toSorted((a) => (a.as === "found" ? -1 : 1));
  drawTable(
    sheet,
    [
      { title: "", share: 2 },
      { title: words.on, share: 1.4 },
      { title: words.judged, share: 1.5 },
      { title: words.worst, share: 1.6, align: "right" },
      { title: words.greatestU, share: 1.3, align: "right" },
      { title: words.change, share: 3 },
    ],
    pair.map((one) => [
      one === proof ? `${words[`as.${one.as}`]} (${words.thisProof})` : words[`as.${one.as}`],
      write.plainDay(one.on),
      answerOf(one, paper),
      ...extremes(one, paper),
      changeOf(one, paper),
    ]),
  );
  drawDrift(paper, page);
}

function drawDrift({ sheet, write, words, force }: ProofPaper, { drift }: ProofPage): void {
  sheet.heading(words.drift);
  if (drift.steps.length === 0) {
    sheet.paragraph(words.firstProof, { quiet: true });
    return;
  }
  drawTable(
    sheet,
    [
      { title: words.fromDay, share: 1 },
      { title: words.toDay, share: 1 },
      { title: words.moved, share: 3 },
    ],
    drift.steps.map(({ from, to, worst }) => [
      write.plainDay(from),
      write.plainDay(to),
      words.changeIs(write.percent(worst.relative, 3), write.percent(worst.expanded, 3), force(worst.atN)),
    ]),
  );
  if (drift.perYear !== undefined)
    sheet.paragraph(words.perYear(write.percent(drift.perYear.slope, 3), write.percent(drift.perYear.expanded, 3)));
}

/** Good, off or cannot tell, with the class where there is one. */
export function answerOf({ judged, result }: Proof, { words, className }: ProofPaper): string {
  const answer = { good: words.standsGood, off: words.standsOff, cannotTell: words.standsCannotTell }[judged];
  return result?.class == null ? answer : `${answer}, ${words.ofClass(className(result.class))}`;
}

function extremes({ result }: Proof, { pct }: ProofPaper): [string, string] {
  const steps = (result?.steps ?? []).filter((step) => step.referenceN > 0);
  const errors = steps.map((step) => (100 * step.errorN) / step.referenceN);
  const worst = errors.toSorted((a, b) => Math.abs(b) - Math.abs(a))[0];
  const greatest = Math.max(0, ...steps.map((step) => step.uncertainty.expandedPct ?? 0));
  return worst === undefined ? ["–", "–"] : [`${pct(worst)} %`, `${pct(greatest)} %`];
}

function changeOf({ change }: Proof, { write, words, force }: ProofPaper): string {
  if (change === null) return "–";
  return words.changeIs(write.percent(change.relative, 3), write.percent(change.expanded, 3), force(change.atN));
}
