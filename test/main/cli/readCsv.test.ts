import { describe, expect, it } from "vitest";
import { UsageError } from "../../../main/cli/Command.ts";
import { readCsv } from "../../../main/cli/readCsv.ts";

const read = (text: string) => readCsv(new TextEncoder().encode(text), "t.csv");
const cells = (text: string) => read(text).rows.map((r) => r.cells);

describe("readCsv", () => {
  // RFC 4180, the rules of clause 2 in their order.
  it.each([
    [
      "rows ended by CRLF, LF or CR",
      "a,b\r\n1,2\n3,4\r5,6",
      [
        ["1", "2"],
        ["3", "4"],
        ["5", "6"],
      ],
    ],
    ["a last row without its end", "a,b\n1,2", [["1", "2"]]],
    ["quoted cells", 'a,b\n"1","2"', [["1", "2"]]],
    ["separators and line ends inside quotes", 'a,b\n"1,5","x\ny"', [["1,5", "x\ny"]]],
    ["a quote doubled inside quotes", 'a,b\n"say ""so""",2', [['say "so"', "2"]]],
    ["empty cells", "a,b,c\n,,3", [["", "", "3"]]],
  ])("reads %s", (_, text, want) => {
    expect(cells(text)).toEqual(want);
  });

  it("takes the separator the head has most of", () => {
    expect(cells("a;b\n1,5;2")).toEqual([["1,5", "2"]]);
    expect(cells("a\tb\n1,5\t2")).toEqual([["1,5", "2"]]);
    expect(cells('"a;x",b\n1,2')).toEqual([["1", "2"]]);
  });

  it("reads UTF-8 and UTF-16 with a byte-order mark, and Windows-1252 without", () => {
    const utf16 = (little: boolean) => {
      const view = new DataView(new ArrayBuffer(2 * 8));
      for (const [i, c] of [..."\uFEFF°,b\n1,2"].entries()) view.setUint16(2 * i, c.charCodeAt(0), little);
      return new Uint8Array(view.buffer);
    };
    const all = [
      new TextEncoder().encode("\uFEFF°,b\n1,2"),
      utf16(true),
      utf16(false),
      Uint8Array.of(0xb0, 0x2c, 0x62, 0x0a, 0x31, 0x2c, 0x32),
    ];
    for (const bytes of all)
      expect(readCsv(bytes, "t.csv")).toEqual({ columns: ["°", "b"], rows: [{ row: 2, cells: ["1", "2"] }] });
  });

  it("numbers rows as a spreadsheet does, blank lines counted and passed over", () => {
    expect(read("a,b\n\n1,2\n , \n3,4\n").rows.map((r) => r.row)).toEqual([3, 5]);
  });

  it.each([
    ["an empty file", "", /is empty/],
    ["a column twice", "a,a\n1,2", /"a" stands twice/],
    ["a short row", "a,b\n1,2\n3", /row 3 has 1 cells and the head 2/],
    ["a long row", "a,b\n1,2,5", /row 2 has 3 cells and the head 2/],
    ["a quote never closed", 'a,b\n"1,2', /row 2 opens a quote/],
  ])("refuses %s and says where", (_, text, words) => {
    expect(() => read(text)).toThrow(UsageError);
    expect(() => read(text)).toThrow(words);
  });
});
