import { describe, expect, it } from "vitest";
import { LineDecoder } from "../../../app/gauge/LineDecoder.ts";
import type { LinePatternInput } from "../../../app/gauge/linePattern.ts";
import { decoded, pattern } from "./collect.ts";
import { bytesOfText } from "./formats.ts";

type Fields = LinePatternInput["fields"];

const plain: Fields = [
  { field: "force", decimalMark: ".", decimals: [2] },
  { field: "text", text: " " },
  { field: "unit" },
];
const filled: Fields = [{ field: "force", sign: "always", wholeDigits: 5, decimals: [0] }];
const framed: Fields = [
  { field: "control", name: "STX" },
  { field: "force", sign: "always", wholeDigits: 4, decimals: [0] },
  { field: "unit" },
  { field: "text", text: "*" },
  { field: "checksum", method: "xor", as: "HEX", first: 2, last: 3 },
];
const on = (fields: Fields, text: string, rest: Partial<LinePatternInput> = {}) =>
  decoded(new LineDecoder(pattern(fields, rest)), text);

describe("LineDecoder", () => {
  it("reads number and unit into newtons, decimal units in one rounding", () => {
    expect(on(plain, "12.34 kN\r\n-0.05 kN\r\n1.01 kN\r\n")).toEqual([
      "unit kN",
      "12340 live",
      "-50 live",
      "1010 live",
    ]);
    expect(on(plain, "2.50 lbf\r\n")).toEqual(["unit lbf", `${2.5 * 4.4482216152605} live`]);
  });

  it("follows a change of unit line by line, and tells it once", () => {
    const calls = on(plain, "1.00 kN\r\n2.00 kN\r\n3.00 N\r\n4.00 daN\r\n");
    expect(calls).toEqual(["unit kN", "1000 live", "2000 live", "unit N", "3 live", "unit daN", "40 live"]);
  });

  it.each([
    "1",
    "12.",
    "12.3",
    "12.34",
    "12.34 ",
    "12.34 k",
    "2.345 kN",
    "12 kN",
    ".34 kN",
    "12.34 kN x",
    "12..34 kN",
    "NaN kN",
    "Inf kN",
    "0x12.34 kN",
    "1.23e1 kN",
    "+ 1.00 kN",
  ])("rejects %j where the pattern wants two decimals and a unit", (line) => {
    expect(on(plain, `${line}\r\n`)).toEqual([expect.stringMatching(/^rejected /)]);
  });

  it.each(["+00", "+0001", "+000123", "00012", "+00012 ", "+0001x"])(
    "rejects %j where the pattern wants a fixed width",
    (line) => {
      expect(on(filled, `${line}\r\n`, { unit: "N" })).toEqual([expect.stringMatching(/^rejected /)]);
    },
  );

  it("names the reason of each refusal", () => {
    const reasons = (text: string) => on(plain, text).join();
    expect(reasons("12.34\r\n")).toBe("rejected frame");
    expect(reasons("12.34;kN\r\n")).toBe("rejected fields");
    expect(reasons("abc kN\r\n")).toBe("rejected number");
    expect(reasons("12.34 bar\r\n")).toBe("rejected unit");
    expect(reasons("12.34 Nm\r\n")).toBe("rejected torque");
    expect(reasons("12.34 k\xce\r\n")).toBe("rejected notAscii");
    expect(reasons(`${"9".repeat(600)}\r\n`)).toBe("rejected tooLong");
    expect(on(framed, "\u0002+0012N*00\r\n")).toEqual(["rejected checksum"]);
  });

  it("takes kg for a force only after the user has said so", () => {
    expect(on(plain, "1.00 kg\r\n")).toEqual(["rejected unit"]);
    expect(on(plain, "1.00 kg\r\n", { massMeansForce: true })).toEqual(["unit kgf", "9.80665 live"]);
  });

  it("wants the unit of bare numbers", () => {
    expect(() => new LineDecoder(pattern([{ field: "force" }]))).toThrow(RangeError);
    expect(on([{ field: "force" }], "12\r\n", { unit: "daN" })).toEqual(["unit daN", "120 live"]);
  });

  it("calls overload a state, by status word, by a word or dashes in the number's place, or by a whole line", () => {
    const status: Fields = [
      { field: "status", words: { ST: "stable", US: "moving", OL: "overload" } },
      { field: "text", text: "," },
      ...filled,
    ];
    expect(on(status, "ST,+00012\r\nOL,+99999\r\n", { unit: "N" })).toEqual([
      "unit N",
      "notice stable",
      "12 live",
      "0 overload",
    ]);
    const instead: Fields = [
      { field: "force", width: 7, decimalMark: ".", decimals: [2], instead: { OL: "overload", "--": "overload" } },
      { field: "text", text: " " },
      { field: "unit" },
    ];
    expect(on(instead, "   1.00 kN\r\n     OL kN\r\n------- kN\r\n  OL\r\n")).toEqual([
      "unit kN",
      "1000 live",
      "0 overload",
      "0 overload",
      "0 overload",
    ]);
    expect(on(plain, "OVER\r\n1.00 kN\r\n", { lines: [{ text: "OVER", means: "overload" }] })).toEqual([
      "0 overload",
      "unit kN",
      "1000 live",
    ]);
  });

  it("marks a held maximum by its word or by its pattern", () => {
    const word: Fields = [
      { field: "status", words: { PEAK: "held", LIVE: "live", MIN: "aside" } },
      { field: "text", text: " " },
      ...plain,
    ];
    expect(on(word, "LIVE 1.00 kN\r\nPEAK 2.00 kN\r\nMIN 0.00 kN\r\n")).toEqual([
      "unit kN",
      "1000 live",
      "2000 held",
      "aside status",
    ]);
    expect(on([{ field: "force", held: true }], "5\r\n", { unit: "N" })).toEqual(["unit N", "5 held"]);
  });

  it("reads further forms of a line after the first", () => {
    const others: LinePatternInput["others"] = [
      {
        means: "reading",
        fields: [...plain, { field: "text", text: " MAX" }].map((f) =>
          f.field === "force" ? { ...f, held: true } : f,
        ) as Fields,
      },
      {
        means: "aside",
        fields: [
          { field: "text", text: "T " },
          { field: "ignored", what: "number", decimalMark: "." },
        ],
      },
    ];
    expect(on(plain, "1.00 kN\r\n2.00 kN MAX\r\nT 23.5\r\nT x\r\n", { others })).toEqual([
      "unit kN",
      "1000 live",
      "2000 held",
      "aside status",
      "rejected number",
    ]);
  });

  it("passes echoes and status lines by without a place in time", () => {
    const lines: LinePatternInput["lines"] = [
      { text: "READ?", means: "echo" },
      { text: "LOW BATT", means: "lowBattery" },
    ];
    expect(on(plain, "READ?\r\n1.00 kN\r\nLOW BATT\r\nREAD\r\n", { lines })).toEqual([
      "aside echo",
      "unit kN",
      "1000 live",
      "notice lowBattery",
      "aside status",
      "rejected number",
    ]);
  });

  it.each([
    ["ms", "0001500", 1.5],
    ["us", "1500000", 1.5],
    ["s", "2.25", 2.25],
    ["clock", "10:00:01.5", 36001.5],
    ["clock", "23:59:59", 86399],
  ] as const)("reads a stamp in %s", (unit, text, seconds) => {
    const fields: Fields = [
      { field: "time", unit, decimalMark: "." },
      { field: "text", text: ";" },
      { field: "force" },
    ];
    expect(on(fields, `${text};7\r\n`, { unit: "N" })).toEqual(["unit N", `7 live @${seconds}`]);
  });

  it.each(["24:60:00", "1:2:3", "12:34:5", "123:00:00"])("refuses the time of day %s", (text) => {
    const fields: Fields = [{ field: "time", unit: "clock" }, { field: "text", text: ";" }, { field: "force" }];
    expect(on(fields, `${text};7\r\n`, { unit: "N" })).toEqual(["rejected fields"]);
  });

  it("stamps nothing by a clock that is coarser than the lines", () => {
    const fields: Fields = [
      { field: "time", unit: "clock", coarse: true },
      { field: "text", text: " " },
      { field: "force" },
    ];
    expect(on(fields, "10:00:00 7\r\n", { unit: "N" })).toEqual(["unit N", "7 live"]);
  });

  it("knows the step of the last digit once a reading was seen", () => {
    const decoder = new LineDecoder(
      pattern([{ field: "force", decimalMark: "." }, { field: "text", text: " " }, { field: "unit" }]),
    );
    expect(decoder.resolutionN).toBeUndefined();
    decoded(decoder, "1.25 kN\r\n");
    expect(decoder.resolutionN).toBe(10);
    decoded(decoder, "12.5 kN\r\n");
    expect(decoder.resolutionN).toBe(100);
    decoded(decoder, "x kN\r\n");
    expect(decoder.resolutionN).toBe(100);
    expect(decoder.counts).toMatchObject({ lines: 3, readings: 2, asides: 0, rejected: { number: 1 } });
  });

  it("shows the line a call is about, control characters by name", () => {
    const lines: string[] = [];
    const decoder = new LineDecoder(pattern(framed));
    const note = () => lines.push(decoder.rawLine);
    decoder.push(bytesOfText("\u0002+0012N*66\r\n\u0002+00\xe4\r\n"), { reading: note, rejected: note });
    expect(lines).toEqual(["<STX>+0012N*66", "<STX>+00<E4>"]);
  });
});
