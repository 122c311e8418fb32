import { describe, expect, it } from "vitest";
import { drawFacts } from "../../../../main/report/pdf/drawFacts.ts";
import { drawQr } from "../../../../main/report/pdf/drawQr.ts";
import { drawTable } from "../../../../main/report/pdf/drawTable.ts";
import { PdfSheet } from "../../../../main/report/pdf/PdfSheet.ts";
import { pdfText } from "../../../support/pdfText.ts";

const sheetOf = (paper: "A4" | "Letter" = "A4") =>
  new PdfSheet({ title: "A trial", subject: "pages", paper, nowMs: Date.UTC(2024, 2, 4), footer: "at the foot" });

describe("the pages of a report", () => {
  it("hold text of both alphabets, tables over pages with their head again, and page numbers", async (context) => {
    const sheet = sheetOf();
    sheet.title("Łódź, Čapek and Müller", "≥ 5 µm");
    drawFacts(sheet, [
      ["gauge", "Bench"],
      ["adapter", "a long name ".repeat(12)],
      ["alone", "here"],
    ]);
    const rows = Array.from({ length: 90 }, (_, i) => [String(i + 1), `row number ${i + 1}`]);
    drawTable(
      sheet,
      [
        { title: "no.", share: 1, align: "right" },
        { title: "what it is", share: 5 },
      ],
      rows,
    );
    const text = pdfText(context, await sheet.finish());
    expect(text).toContain("Łódź, Čapek and Müller");
    expect(text).toContain(">= 5 um");
    expect(text.match(/what it is/g)).toHaveLength(3);
    for (const [, name] of rows) expect(text).toContain(name);
    expect(text).toContain("page 1 of 3");
    expect(text).toContain("page 3 of 3");
    expect(text.match(/at the foot/g)).toHaveLength(3);
  });

  it("break a paragraph that is longer than a page, and a word that is longer than a line", async (context) => {
    const sheet = sheetOf("Letter");
    sheet.paragraph(Array.from({ length: 1_500 }, (_, i) => `word${i}`).join(" "));
    sheet.paragraph("x".repeat(400));
    const text = pdfText(context, await sheet.finish());
    for (const i of [0, 700, 1_499]) expect(text).toContain(`word${i}`);
    expect(
      text
        .match(/x+/g)!
        .filter((run) => run.length > 5)
        .join(""),
    ).toHaveLength(400);
  });

  it("take a drawn code among their text", async (context) => {
    const sheet = sheetOf();
    drawQr(sheet, "a text to find again", { x: sheet.left, y: sheet.y, width: 90, height: 90 }, "a code");
    sheet.space(100);
    sheet.paragraph("under it");
    expect(pdfText(context, await sheet.finish())).toContain("under it");
  });
});
