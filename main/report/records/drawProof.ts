import { chainReports } from "../../store/ledger/LedgerReport.ts";
import { signedHeads } from "../../store/ledger/signedHeads.ts";
import { drawFacts, type Fact } from "../pdf/drawFacts.ts";
import { drawQr } from "../pdf/drawQr.ts";
import { drawTable } from "../pdf/drawTable.ts";
import type { PdfSheet } from "../pdf/PdfSheet.ts";
import type { About } from "./About.ts";

const QR = 92;
/** More than so many chains do not fit into a code that still reads. */
const IN_CODE = 6;

/** How the report can be held against the records: where each chain ends, in words and as a code. @param about  what the report is of */
export function drawProof(sheet: PdfSheet, { db }: About, subject: string, facts: readonly Fact[] = []): void {
  const chains = chainReports(db, []).filter((chain) => chain.entries > 0);
  const signed = new Map(signedHeads(db).map((head) => [head.hash, head]));
  sheet.heading("How to prove this report", QR + 40);
  sheet.paragraph(
    "Each entry of the records carries the hash of the one before. A data file or archive that holds these heads, with " +
      "nothing damaged by holdfast verify, holds the records this report was made from. The chain finds accidents and " +
      "naive edits; whoever holds both the file and its key can write both anew.",
    { quiet: true, size: 9 },
  );
  drawFacts(sheet, facts, 1);
  drawTable(
    sheet,
    [
      { title: "chain (origin)", share: 4 },
      { title: "entries", share: 0.9, align: "right" },
      { title: "head (SHA-256) and signature", share: 5 },
    ],
    chains.map(({ origin, entries, head }) => {
      const signature = signed.get(head);
      const said = signature === undefined ? "not signed" : `signed ${signature.at} by key ${signature.publicKey}`;
      return [origin, String(entries), `${head}\n${said}`];
    }),
  );
  const code = ["holdfast", subject, ...chains.slice(0, IN_CODE).map((c) => `${c.origin}/${c.entries} ${c.head}`)];
  sheet.need(QR);
  const box = { x: sheet.left, y: sheet.y, width: QR, height: QR };
  drawQr(sheet, code.join("\n"), box, `Code with the same in plain text: ${code.join(", ")}`);
  sheet.y += QR;
}
