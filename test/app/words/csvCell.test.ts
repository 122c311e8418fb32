import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { csvCell, csvLine } from "../../../app/words/csvCell.ts";
import { outsideTool } from "../../support/outsideTool.ts";

// RFC 4180, section 2, points 5 to 7: fields with quotes, line ends and commas.
describe("a cell of CSV", () => {
  it("writes the examples of RFC 4180", () => {
    expect(csvLine(["aaa", "b\r\nbb", "ccc"])).toBe('aaa,"b\r\nbb",ccc\r\n');
    expect(csvLine(["aaa", 'b"bb', "ccc"])).toBe('aaa,"b""bb",ccc\r\n');
    expect(csvLine(["zzz", "yyy", "xxx"])).toBe("zzz,yyy,xxx\r\n");
  });

  it.each(["=1+1", "+SUM(A1)", "-2+3", "@cmd", "\tx", "\rx", "\nx", "'quoted", '=HYPERLINK("http://x","y")'])(
    "puts an apostrophe before %j, and taking it off gives the text back",
    (text) => {
      const [[cell]] = parse(csvLine([text])) as [[string]];
      expect(cell).toBe(`'${text}`);
    },
  );

  it.each([-1.5, -3e-7, 0, 12, 1e21])("leaves the number %d a number", (value) => {
    expect(Number(csvCell(value))).toBe(value);
    expect(csvCell(value)).not.toContain("'");
  });

  it("leaves a negative number in a text column a number", () => {
    expect(csvCell("-12.5")).toBe("-12.5");
  });

  it("is empty for what is not there and JSON for what is nested", () => {
    expect(csvLine([null, undefined, "", { a: 1, b: "x" }, [1, 2]])).toBe(',,,"{""a"":1,""b"":""x""}","[1,2]"\r\n');
  });

  it("is read back the same by Python's csv module", (context) => {
    const rows = [
      ["plain", 'quo"te', "com,ma", "two\r\nlines", "ünïcode ≥ µ", "-5"],
      ["", " blanks ", "'", "a'b", "1e-5", "x=y"],
    ];
    const script =
      "import csv,sys,io,json; print(json.dumps(list(csv.reader(io.StringIO(sys.stdin.buffer.read().decode('utf-8'), newline=''), strict=True))))";
    const ran = outsideTool(context, "python3", ["-c", script], rows.map(csvLine).join(""));
    const back = (JSON.parse(ran.stdout) as string[][]).map((row) => row.map((cell) => cell.replace(/^'/, "")));
    expect(back).toEqual(rows);
  });
});
