import { describe, expect, it } from "vitest";
import { openTable } from "../../../../main/import/openTable.ts";
import type { Table } from "../../../../main/import/Table.ts";
import { sheetStretches } from "../../../../main/import/xlsx/sheetStretches.ts";
import { workbook, workbookParts, zipped } from "../../../support/workbook.ts";

const table = async (bytes: Buffer) =>
  (await openTable({ base64: bytes.toString("base64"), sheet: undefined })) as Table;

describe("a long sheet", () => {
  it("is handed over in stretches and comes out whole, each row under its number with its own text", async () => {
    const rows = Array.from({ length: 30_000 }, (_, i) =>
      i % 1_000 === 7
        ? []
        : [`Mill ${i % 50}`, { date: 40_000 + (i % 5_000) }, i / 4, i % 3 === 0 ? `note ${i}` : null],
    );
    const bytes = workbook([["Spindle", "Date", "Force kN", "Remark"], ...rows]);
    const sheet = workbookParts([{ rows }])["xl/worksheets/sheet1.xml"]!;
    expect(sheet.length).toBeGreaterThan(3_000_000); // several stretches
    const found = await table(bytes);
    const day = (n: number) => new Date(Date.UTC(1899, 11, 30 + n)).toISOString().slice(0, 10);
    const wanted = rows.flatMap((row, i) =>
      row.length === 0
        ? []
        : [
            {
              row: i + 2,
              cells: [`Mill ${i % 50}`, day(40_000 + (i % 5_000)), String(i / 4), i % 3 === 0 ? `note ${i}` : ""],
            },
          ],
    );
    expect(found.rows).toEqual(wanted);
  }, 60_000);

  it("names the row of the whole sheet where a cell cannot be read", async () => {
    const rows = Array.from({ length: 30_000 }, (_, i) => [
      `Mill ${i}`,
      i === 29_000 ? { xml: '<c r="AT" t="b"><v>7</v></c>' } : i,
    ]);
    expect((await table(workbook([["Spindle", "Force kN"], ...rows]))) as unknown).toMatchObject({
      message: expect.stringMatching(/\brow 29002\b/),
    });
  }, 60_000);
});

describe("a sheet of odd making", () => {
  const parts = workbookParts([{ rows: [["a"], ["1"]] }]);
  const withSheet = (xml: string) => zipped({ ...parts, "xl/worksheets/sheet1.xml": xml });

  it("is read through whatever names its tags have, and attributes in any order", async () => {
    const xml = `<x:worksheet xmlns:x="m"><x:sheetData><x:row r="1"><x:c t="inlineStr" r="A1"><x:is><x:t>Name</x:t></x:is></x:c></x:row><x:row r="3"><x:c t='str' r='A3'><x:f>"a"&gt;"b"</x:f><x:v>Mill 3</x:v></x:c></x:row></x:sheetData></x:worksheet>`;
    expect(await table(withSheet(xml))).toMatchObject({ columns: ["Name"], rows: [{ row: 3, cells: ["Mill 3"] }] });
  });

  it("is refused where its rows are out of order", async () => {
    const xml = `<worksheet><sheetData><row r="2"><c r="A2"><v>1</v></c></row><row r="1"><c r="A1"><v>1</v></c></row></sheetData></worksheet>`;
    expect((await table(withSheet(xml))) as unknown).toMatchObject({
      message: expect.stringMatching(/rows are out of order/),
    });
  });

  it("hands each stretch only the shared texts it uses: a long one is not multiplied", () => {
    const strings = `<sst><si><t>a</t></si><si/><si><r><t>${"b".repeat(1_000)}</t></r></si></sst>`;
    const cell = (row: number, text: number) => `<row r="${row}"><c r="A${row}" t="s"><v>${text}</v></c></row>`;
    const xml = `<worksheet><sheetData>${cell(4, 2)}${cell(5, 2)}${cell(9, 1)}</sheetData></worksheet>`;
    const [only, ...more] = sheetStretches(xml, strings);
    expect(more).toEqual([]);
    expect(only).toMatchObject({ firstRow: 4, strings: `<sst><si><r><t>${"b".repeat(1_000)}</t></r></si><si/></sst>` });
    expect(only!.sheet).toContain(
      '<row r="2"><c r="A2" t="s"><v>0</v></c></row><row r="6"><c r="A6" t="s"><v>1</v></c></row>',
    );
  });
});
