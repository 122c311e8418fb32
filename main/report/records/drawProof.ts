import { chainReports } from "../../store/ledger/LedgerReport.ts";
import { signedHeads } from "../../store/ledger/signedHeads.ts";
import { drawFacts, type Fact } from "../pdf/drawFacts.ts";
import { drawQr } from "../pdf/drawQr.ts";
import { drawTable } from "../pdf/drawTable.ts";
import type { PdfSheet } from "../pdf/PdfSheet.ts";
import type { About } from "./About.ts";
import { reportTexts } from "./reportTexts.ts";

const QR = 92;
/** More than so many chains do not fit into a code that still reads. */
const IN_CODE = 6;

/** How the report can be held against the records: where each chain ends, in words and as a code. @param subject  what the report is of */
export function drawProof(sheet: PdfSheet, { db, write }: About, subject: string, facts: readonly Fact[] = []): void {
  const words = reportTexts[write.language];
  const chains = chainReports(db, []).filter((chain) => chain.entries > 0);
  const signed = new Map(signedHeads(db).map((head) => [head.hash, head]));
  sheet.heading(words.proveTitle, QR + 40);
  sheet.paragraph(words.proveWhy, { quiet: true, size: 9 });
  if (facts.length > 0) drawFacts(sheet, facts, 1);
  drawTable(
    sheet,
    [
      { title: words.chain, share: 4 },
      { title: words.entries, share: 0.9, align: "right" },
      { title: words.head, share: 5 },
    ],
    chains.map(({ origin, entries, head }) => {
      const signature = signed.get(head);
      const said = signature === undefined ? words.notSigned : words.signed(signature.at, signature.publicKey);
      return [origin, String(entries), `${head}\n${said}`];
    }),
  );
  const code = ["holdfast", subject, ...chains.slice(0, IN_CODE).map((c) => `${c.origin}/${c.entries} ${c.head}`)];
  sheet.need(QR);
  const box = { x: sheet.left, y: sheet.y, width: QR, height: QR };
  drawQr(sheet, code.join("\n"), box, words.codeAlt(code.join(", ")));
  sheet.y += QR;
}
