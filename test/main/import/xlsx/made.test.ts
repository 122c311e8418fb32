import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { previewFile } from "../../../../main/import/importFile.ts";
import { openTable } from "../../../../main/import/openTable.ts";
import type { Table } from "../../../../main/import/Table.ts";
import { TableError } from "../../../../main/import/TableError.ts";
import { storeInTemp } from "../../../support/storeInTemp.ts";

/**
 * Workbooks as general-purpose programs write them: LibreOffice Calc 7.4.7, XlsxWriter 3.2.9, openpyxl 3.1.5. How each was
 * made stands in `made/make.sh`; what goes in stands in its source beside it (`.fods`, `.csv`, `otherWriters.py`).
 */
const base64 = (name: string) => readFileSync(join(import.meta.dirname, "made", name)).toString("base64");

async function table(name: string, sheet?: string): Promise<Table> {
  const found = await openTable({ base64: base64(name), sheet });
  if (found instanceof TableError) throw found;
  return found;
}
const cells = async (name: string, sheet?: string) => (await table(name, sheet)).rows.map((row) => row.cells);

describe("a workbook out of LibreOffice", () => {
  it("shows its sheets that hold something and can be seen, and asks which one is meant", async () => {
    expect((await table("checks.xlsx")).book).toMatchObject({
      sheets: ["Prüfungen 2019", "Bemerkungen"],
      sheet: undefined,
      hidden: 1,
    });
  });

  it("gives days, times, formulas, percent and long numbers as they stand in its source", async () => {
    const found = await table("checks.xlsx", "Prüfungen 2019");
    expect(found.columns).toEqual([
      ...["Spindel", "Datum", "Uhrzeit", "Spannkraft [kN]", "Sollkraft kN", "Anteil", "Zähler", "Seriennummer"],
      ...["in Ordnung", "Bemerkung"],
    ]);
    expect(found.rows.map(({ row }) => row)).toEqual([6, 10, 11, 12]); // empty rows count
    const note = "nach Wartung, Federn neu\nzweite Zeile";
    expect(found.rows.map((row) => row.cells)).toEqual([
      // 23 digits as text stay; as a figure a spreadsheet has kept fifteen of them.
      [
        "Fräse 3",
        "2019-03-15",
        "14:30:00",
        "17.92",
        "18",
        "0.995555555555556",
        "1204512",
        "00712345678901234567890",
      ].concat("TRUE", note),
      [
        "Fräse 3",
        "2019-09-16",
        "00:05:00",
        "17.4",
        "18",
        "0.966666666666667",
        "1304512",
        "712345678901235000000",
      ].concat("FALSE", ""),
      // A formula that came to an error has no value; 17.92 - 1.5 * 2 has.
      ["Drehe 1", "2019-02-28", "", "14.92", "", "", "", "123456789012346000", "", '<= 15 "knapp"'],
      ["Drehe 1", "2019-08-28 23:59:59", "", "14.8", "", "", "", "", "", ""],
    ]);
  });

  it("made of German text has figures with a point and days of the calendar, and lost the zeros of 007 there", async () => {
    expect(await cells("german.xlsx")).toEqual([
      ["Fräse 3", "2019-03-15", "17.92", "A63", "nach Wartung; Federn neu"],
      ["Fräse 3", "2019-09-16 07:45:00", "17.4", "A63", ""],
      ["Drehe 1", "2019-02-28", "1014.5", "7", ""],
    ]);
  });

  it("counts its days from 1904 where it says so", async () => {
    expect(await cells("from1904.xlsx")).toEqual([
      ["Mill 3", "2019-03-15 06:00:00", "17.92", "06:00:00"],
      ["Mill 3", "2020-02-29", "17.4", "14:30:00"],
    ]);
  });

  it("is understood as a file of old checks, heads and all", async () => {
    const file = {
      what: "checks" as const,
      fileName: "old.xlsx",
      base64: base64("checks.xlsx"),
      sheet: "Prüfungen 2019",
    };
    const names = ["Fräse 3", "Drehe 1"].map((name) => ({ thing: "spindle" as const, name, to: "create" as const }));
    const shown = await previewFile({ ...file, names }, storeInTemp().db, Date.parse("2026-03-04T09:00:00Z"), () => {});
    expect(shown).toMatchObject({ ready: 4, stopped: false });
    const taken = shown.columns.flatMap(({ name, field }) => (field === undefined ? [] : [[name, field]]));
    expect(taken).toEqual([
      ["Spindel", "spindle"],
      ["Datum", "day"],
      ["Uhrzeit", "time"],
      ["Spannkraft [kN]", "value"],
      ["Zähler", "counter"],
      ["Bemerkung", "note"],
    ]);
  });
});

describe("a workbook out of another writer", () => {
  it.each([
    ["with its text within the cells", "inline1900.xlsx"],
    ["and with days from 1904", "inline1904.xlsx"],
    ["with days written as ISO 8601", "isoDates.xlsx"],
  ])("%s gives the same table", async (_, name) => {
    const found = await table(name);
    expect(found.columns).toEqual(["Spindle", "Date", "Force kN", "Time"]);
    expect(found.rows).toEqual([
      { row: 2, cells: ["Mill 3", "2019-03-15", "17.92", "14:30:00"] },
      { row: 3, cells: ["Mill 3", "2020-02-29 23:59:59", "17.4", ""] },
      { row: 5, cells: ["Bühler & Söhne <2>", "2024-12-31", "0.3", "00:00:00"] },
    ]);
  });
});
