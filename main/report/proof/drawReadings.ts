import type { ProofPage } from "../../../app/contract/proofViews.ts";
import { fromNewtons } from "../../../app/quantity/forceUnits.ts";
import { replacedReason } from "../../../app/words/replacedReason.ts";
import { drawTable } from "../pdf/drawTable.ts";
import type { ProofPaper } from "./ProofPaper.ts";

/** Every reading as it was taken, those taken again too, with the reason. */
export function drawReadings({ sheet, write, words, unit, figure }: ProofPaper, { proof }: ProofPage): void {
  const right = { align: "right" } as const;
  const indications = proof.takings.map(({ indicationN }) => fromNewtons(indicationN, unit));
  const decimals = Math.max(0, ...indications.map(decimalsOf));
  sheet.heading(words.readings);
  drawTable(
    sheet,
    [
      { title: words.time, share: 1.1 },
      { title: words.run, share: 0.7 },
      { title: words.position, share: 0.9, ...right },
      { title: words.kindOf, share: 1.5 },
      { title: words.ref(unit), share: 1.5, ...right },
      { title: words.shown(unit), share: 1.6, ...right },
      { title: words.n, share: 0.7, ...right },
      { title: "", share: 2.6 },
    ],
    proof.takings.map((taking, i) => [
      new Date(Date.parse(taking.at) + proof.offsetMinutes * 60_000).toISOString().slice(11, 19),
      taking.run,
      `${write.digits(taking.positionDeg)}°`,
      words[`dir.${taking.direction}`],
      figure(taking.referenceN),
      write.number(indications[i], decimals),
      taking.indicationTyped === null ? String(taking.n) : words.typedIn,
      taking.replaced === null ? "" : words.replaced(replacedReason(taking.replaced.reason, write.speech)),
    ]),
  );
}

/** Digits behind the mark that an indication has, at most six of nine in all: none that was shown is rounded away. */
const decimalsOf = (value: number) => Math.min(6, String(Number(value.toPrecision(9))).split(".")[1]?.length ?? 0);
