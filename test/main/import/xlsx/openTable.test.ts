import { describe, expect, it } from "vitest";
import { openTable } from "../../../../main/import/openTable.ts";
import { TableError } from "../../../../main/import/TableError.ts";
import { BookParts } from "../../../../main/import/xlsx/BookParts.ts";
import { workbook, workbookParts, zipped } from "../../../support/workbook.ts";

const open = (bytes: Uint8Array, sheet?: string) => openTable({ base64: Buffer.from(bytes).toString("base64"), sheet });

async function table(bytes: Uint8Array, sheet?: string) {
  const found = await open(bytes, sheet);
  if (found instanceof TableError) throw found;
  return found;
}
const cells = async (bytes: Uint8Array) => (await table(bytes)).rows.map((row) => row.cells);
const refusal = async (bytes: Uint8Array) => {
  const found = await open(bytes);
  expect(found).toBeInstanceOf(TableError);
  return (found as TableError).message;
};

const head = ["Spindle", "Date", "Force_kN"];

describe("a workbook as a table", () => {
  it("reads text, figures and days, each row under its own number", async () => {
    const found = await table(
      workbook([head, ["Mill 3", { date: 45_356 }, 17.92], [null, null, null], ["Mill 4", "3.4.2024", 18]]),
    );
    expect(found.columns).toEqual(head);
    expect(found.rows).toEqual([
      { row: 2, cells: ["Mill 3", "2024-03-05", "17.92"] },
      { row: 4, cells: ["Mill 4", "3.4.2024", "18"] },
    ]);
  });

  it("finds the head under a title and its date", async () => {
    const rows = [["Clamping forces, hall B"], [{ date: 45_000 }], [], head, ["Mill 3", { date: 45_356 }, 17.92]];
    const found = await table(workbook(rows));
    expect(found.columns).toEqual(head);
    expect(found.rows).toEqual([{ row: 5, cells: ["Mill 3", "2024-03-05", "17.92"] }]);
  });

  // ECMA-376-1, 18.17.4.1, from memory: the serial value of 3 February 1910 10:05:54 in the date system from 1900.
  it.each([
    [false, 3687.4207639, "1910-02-03 10:05:54"],
    // The systems lie 1462 days apart: day 0 is the last of 1899 in one, the first of 1904 in the other.
    [true, 3687.4207639 - 1462, "1910-02-03 10:05:54"],
    [false, 61, "1900-03-01"],
    [true, 45_356 - 1462, "2024-03-05"],
  ])("reads day numbers from 1900 and from 1904 (1904: %s, %d)", async (date1904, date, said) => {
    expect(await cells(workbook([["a"], [{ date }]], { date1904 }))).toEqual([[said]]);
  });

  it("reads a time of day that has no day", async () => {
    expect(
      await cells(
        workbook([
          ["a", "b"],
          ["x", { date: 14.5 / 24 }],
        ]),
      ),
    ).toEqual([["x", "14:30:00"]]);
  });

  it("reads what a formula last came to, and nothing where it came to nothing", async () => {
    const error = { xml: '<c r="AT" t="e"><f>1/0</f><v>#DIV/0!</v></c>' };
    const text = { xml: '<c r="AT" t="str"><f>A1</f><v>Mill 3</v></c>' };
    const rows = [
      ["a", "b", "c", "d", "e"],
      [text, { formula: "9+9", value: 18 }, error, { formula: "NOW()" }, "end"],
    ];
    expect(await cells(workbook(rows))).toEqual([["Mill 3", "18", "", "", "end"]]);
  });

  it("keeps fifteen digits of a figure, as many as a spreadsheet has", async () => {
    expect(await cells(workbook([["a"], [{ xml: '<c r="AT"><v>17.919999999999998</v></c>' }]]))).toEqual([["17.92"]]);
  });

  it("reads rich text, text within the cell, and letters written as entities", async () => {
    const parts = workbookParts([
      {
        rows: [
          ["a", "b"],
          ["x", { xml: '<c r="AT" t="inlineStr"><is><t>Fr&#228;se &amp; Co</t></is></c>' }],
        ],
      },
    ]);
    const rich = parts["xl/sharedStrings.xml"]!.replace("<t>x</t>", "<r><t>Mill</t></r><r><t> 3</t></r>");
    expect(await cells(zipped({ ...parts, "xl/sharedStrings.xml": rich }))).toEqual([["Mill 3", "Fräse & Co"]]);
  });

  it("reads cells that are joined over several rows for each of them", async () => {
    const rows = [
      head,
      ["Mill 3", { date: 45_356 }, 17.9],
      [null, { date: 45_357 }, 18],
      ["Mill 4", { date: 45_358 }, 19],
    ];
    const found = await table(workbook(rows, { joined: ["A2:A3", "A1:C1"] }));
    expect(found.rows.map((row) => row.cells[0])).toEqual(["Mill 3", "Mill 3", "Mill 4"]);
    expect(found.book?.joined).toEqual([{ fromRow: 2, toRow: 3, place: 0 }]);
  });

  it("takes the only sheet with something in it, leaves hidden ones aside, and asks between several", async () => {
    const list = [["a"], ["1"]];
    const one = await table(zipped(workbookParts([{ rows: [] }, { rows: list }, { rows: list, state: "hidden" }])));
    expect(one.book).toMatchObject({ sheets: ["Sheet2"], sheet: "Sheet2", hidden: 1 });
    const two = zipped(
      workbookParts([
        { name: "2019", rows: list },
        { name: "2020", rows: [["b"], ["2"]] },
      ]),
    );
    expect(await table(two)).toMatchObject({
      columns: [],
      rows: [],
      book: { sheets: ["2019", "2020"], sheet: undefined },
    });
    expect(await table(two, "2020")).toMatchObject({ columns: ["b"], rows: [{ row: 2, cells: ["2"] }] });
  });

  it("calls a column without a name by its letter, and leaves out columns with nothing in them", async () => {
    const found = await table(
      workbook([
        ["a", null, "c", null],
        ["1", null, "3", "4"],
      ]),
    );
    expect(found).toMatchObject({ columns: ["a", "c", "D"], rows: [{ cells: ["1", "3", "4"] }] });
  });

  it("takes text for what it is, whatever the file is called", async () => {
    expect(await table(Buffer.from("a;b\n1;2\n"))).toMatchObject({
      columns: ["a", "b"],
      separator: ";",
      book: undefined,
    });
  });
});

describe("a workbook that cannot be read", () => {
  it.each<[string, Uint8Array, RegExp]>([
    ["with nothing in it", workbook([]), /is empty/],
    ["behind a password", Buffer.from("d0cf11e0a1b11ae1000000000000", "hex"), /old form or behind a password/],
    ["cut short", workbook([["a"], ["1"]]).subarray(0, -30), /no zip archive, or was cut short/],
    ["that is another kind of archive", zipped({ "word/document.xml": "<x/>" }), /is no XLSX workbook; save it/],
    [
      "with two columns of one name",
      workbook([
        ["a", "a"],
        ["1", "2"],
      ]),
      /"a" stands twice/,
    ],
  ])("%s is answered with the reason", async (_, bytes, why) => {
    expect(await refusal(bytes)).toMatch(why);
  });

  const parts = workbookParts([{ rows: [["a"], ["1"]] }]);
  const sheet = "xl/worksheets/sheet1.xml";
  const withSheet = (xml: string) =>
    zipped({ ...parts, [sheet]: `<worksheet><sheetData>${xml}</sheetData></worksheet>` });

  it("is refused when it declares entities, before anything expands them", async () => {
    const bomb = `<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]>`;
    expect(
      await refusal(zipped({ ...parts, "xl/sharedStrings.xml": `${bomb}<sst><si><t>&b;</t></si></sst>` })),
    ).toMatch(/document type/);
  });

  it("is refused when a part would swell beyond all measure, without unpacking it", async () => {
    const started = performance.now();
    const strings = `<sst><si><t>${"a".repeat(60_000_000)}</t></si></sst>`;
    const bytes = zipped({ ...parts, "xl/sharedStrings.xml": strings });
    const packed = performance.now();
    expect(await refusal(bytes)).toMatch(/would swell to/);
    expect(performance.now() - packed).toBeLessThan(packed - started);
  });

  it("is refused when a part holds more than the directory says", async () => {
    const bytes = zipped(parts);
    const at = bytes.lastIndexOf(Buffer.from(sheet)) - 46; // its entry in the directory
    const size = bytes.readUInt32LE(at + 24);
    bytes.writeUInt32LE(size - 20, at + 24);
    expect(await refusal(bytes)).toMatch(/holds more than the archive says/);
  });

  it("is refused when its parts are too large together", () => {
    const two = new BookParts(zipped({ "a.xml": "a".repeat(600), "b.xml": "b".repeat(600) }), 1_000);
    expect(two.text("a.xml")).toHaveLength(600);
    expect(() => two.text("b.xml")).toThrow(/too large unpacked/);
  });

  it.each([
    ["a row that no sheet has", '<row r="1000000000"><c r="A1000000000"><v>1</v></c></row>', /row 1000000000/],
    ["a column that no sheet has", '<row r="1"><c r="ZZZZZZ1"><v>1</v></c></row>', /does not say where it stands/],
    ["a cell far to the right", '<row r="1"><c r="XFD1"><v>1</v></c></row>', /beyond column 200/],
    [
      "a place behind an odd sign",
      `<row r="1"><c s="&gt;" r='ZZZZZZ1'><v>1</v></c></row>`,
      /does not say where it stands/,
    ],
    [
      "a place written in entities",
      '<row r="1"><c r="&#90;&#90;&#90;&#90;1"><v>1</v></c></row>',
      /does not say where it stands/,
    ],
    ["a cell with broken attributes", '<row r="1"><c r="A1" x=">"y><v>1</v></c></row>', /not well formed/],
    ["a cell of an unknown kind", '<row r="1"><c r="A1" t="zz"><v>1</v></c></row>', /cannot be read as a workbook/],
    [
      "a text that is not among the shared ones",
      '<row r="1"><c r="A1" t="s"><v>99</v></c></row>',
      /cannot be read as a workbook/,
    ],
  ])("is refused with %s", async (_, xml, why) => {
    expect(await refusal(withSheet(xml))).toMatch(why);
  });
});
