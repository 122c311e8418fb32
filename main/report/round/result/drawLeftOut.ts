import { drawFacts } from "../../pdf/drawFacts.ts";
import { drawTable } from "../../pdf/drawTable.ts";
import type { PdfSheet } from "../../pdf/PdfSheet.ts";
import type { Writing } from "../../records/Writing.ts";
import { roundReportTexts } from "./roundReportTexts.ts";
import type { RoundResult } from "./roundResult.ts";

/** What came back and was filed nowhere, each reading with its reason; where the readings came from. */
export function drawLeftOut(sheet: PdfSheet, { dockings }: RoundResult, write: Writing): void {
  const words = roundReportTexts[write.language];
  sheet.heading(words.leftOut);
  if (dockings.length === 0) {
    sheet.paragraph(words.notDocked, { quiet: true });
    return;
  }
  for (const { source, records, clock, fileName } of dockings) {
    const offS = clock === null ? 0 : Math.round((clock.gaugeMs - clock.pcMs) / 1000);
    const from = words.readings(records.length, words[`source.${source}`]);
    drawFacts(
      sheet,
      [
        [words.docked, fileName === null ? from : `${from} (${fileName})`],
        ...(offS === 0 ? [] : [[words.clock, words.off(write.number(offS))] as const]),
      ],
      1,
    );
  }
  const left = dockings.flatMap(({ records }) => records.filter((record) => record.leftOut !== null));
  if (left.length === 0) {
    sheet.paragraph(words.noneLeftOut, { quiet: true });
    return;
  }
  drawTable(
    sheet,
    [
      { title: words.reading, share: 1.2, align: "right" },
      { title: words.raw, share: 4.5 },
      { title: words.why, share: 3 },
    ],
    left.map(({ number, raw, leftOut }) => [number ?? "", raw.trim(), whyWords(leftOut ?? "", words)]),
  );
}

/** A code this program knows in words; what somebody wrote stays as written. */
function whyWords(why: string, words: Readonly<Record<string, unknown>>): string {
  const said = words[`why.${why}`];
  return typeof said === "string" ? said : why;
}
