import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { LineDecoder } from "../../../app/gauge/LineDecoder.ts";
import type { LinePatternInput } from "../../../app/gauge/linePattern.ts";
import { collector, decoded, pattern } from "./collect.ts";
import { bytesOfText, formats, lcg, shownReadings, streamOf } from "./formats.ts";

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

describe("LineDecoder on streams with faults", { timeout: 60_000 }, () => {
  it("starts anew at a start byte inside a line whose end was lost", () => {
    const good = "\u0002+0012N*66";
    expect(on(framed, `\u0002+00${good}\r\n${good}\r\n`)).toEqual(["rejected number", "unit N", "12 live", "12 live"]);
  });

  it("reads what is whole of two lines that a lost LF ran together, and takes a stray CR inside one for damage", () => {
    expect(on(plain, "1.00 kN\r2.00 kN\r\n")).toEqual(["rejected frame"]); // "2.00" may have lost its first digits
    const stated: Fields = [{ field: "status", words: { F: "other" } }, ...plain];
    expect(on(stated, "F1.00 kN\rF2.00 kN\r\n")).toEqual(["unit kN", "1000 live", "2000 live"]);
    expect(on(stated, "F1.00 k\rF2.00 kN\r\n")).toEqual(["rejected unit", "unit kN", "2000 live"]);
    expect(on(stated, "F1.\r00 kN\r\n")).toEqual(["rejected number"]);
  });

  it("strips a parity bit, and a byte that breaks it rejects its line only", () => {
    const even = (text: string) =>
      String.fromCharCode(
        ...[...text].map((c) => {
          const code = c.charCodeAt(0);
          return [...code.toString(2)].filter((bit) => bit === "1").length % 2 === 0 ? code : code | 0x80;
        }),
      );
    const line = even("1.00 kN\r\n");
    const broken = String.fromCharCode(line.charCodeAt(0) ^ 0x80) + line.slice(1);
    expect(on(plain, line + broken + line, { parity: "even" })).toEqual([
      "unit kN",
      "1000 live",
      "rejected parity",
      "1000 live",
    ]);
    const brokenEnd = line.slice(0, -1) + String.fromCharCode(line.charCodeAt(line.length - 1) ^ 0x80);
    expect(on(plain, line + brokenEnd + line, { parity: "even" })).toEqual([
      "unit kN",
      "1000 live",
      "rejected parity",
      "1000 live",
    ]);
  });

  it("reads a last line without its end only where the pattern proves it whole", () => {
    const end = (fields: Fields, text: string, rest: Partial<LinePatternInput> = {}) => {
      const { calls, sink } = collector();
      const decoder = new LineDecoder(pattern(fields, rest));
      decoder.push(bytesOfText(text), sink);
      decoder.end(sink);
      return calls;
    };
    expect(end(plain, "1.00 kN\r\n2.00 kN")).toEqual(["unit kN", "1000 live", "2000 live"]);
    expect(end(plain, "1.00 kN\r\n2.00 kN\r")).toEqual(["unit kN", "1000 live", "2000 live"]);
    expect(end(plain, "1.00 kN\r\n2.00 k")).toEqual(["unit kN", "1000 live"]);
    expect(end([{ field: "force" }], "12\r\n12", { unit: "N" })).toEqual(["unit N", "12 live"]);
    expect(end(filled, "+00012\r\n+00013", { unit: "N" })).toEqual(["unit N", "12 live", "13 live"]);
  });

  it("believes the first line after a gap only where the pattern proves its beginning", () => {
    const gap = (fields: Fields, before: string, after: string, rest: Partial<LinePatternInput> = {}) => {
      const { calls, sink } = collector();
      const decoder = new LineDecoder(pattern(fields, rest));
      decoder.push(bytesOfText(before), sink);
      decoder.gap();
      decoder.push(bytesOfText(after), sink);
      return calls;
    };
    expect(gap(plain, "1.00 kN\r\n1.0", "2.00 kN\r\n3.00 kN\r\n")).toEqual(["unit kN", "1000 live", "3000 live"]);
    expect(gap(filled, "+00001\r\n+0", "+00002\r\n", { unit: "N" })).toEqual(["unit N", "1 live", "2 live"]);
    expect(gap(filled, "+00001\r\n+0", "0002\r\n+00003\r\n", { unit: "N" })).toEqual([
      "unit N",
      "1 live",
      "rejected number",
      "3 live",
    ]);
  });

  it("gives the same calls for any chunking of good, damaged and foreign bytes", () => {
    const random = lcg(17);
    const streams = formats
      .filter((f, i) => i % 3 === 0 || f.end !== "\r\n")
      .map((format) => {
        const text = streamOf(format, shownReadings(format, 12));
        return {
          format,
          bytes: bytesOfText(text).map((byte) => (random() < 0.03 ? Math.floor(random() * 256) : byte)),
        };
      });
    const patterns = [
      pattern(plain),
      pattern(filled, { unit: "N" }),
      pattern(framed),
      pattern(plain, { terminator: "any" }),
      pattern(plain, { terminator: "CR" }),
      pattern(framed, { terminator: "ETX", fill: true }),
      pattern(framed, { terminator: "ETX", afterEnd: 2 }),
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...streams),
        fc.constantFrom(...patterns),
        fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 9 }),
        ({ bytes }, p, sizes) => {
          const whole = collector();
          const once = new LineDecoder(p);
          once.push(bytes, whole.sink);
          once.end(whole.sink);
          const pieces = collector();
          const often = new LineDecoder(p);
          for (let at = 0, k = 0; at < bytes.length; k += 1) {
            often.push(bytes.subarray(at, at + sizes[k % sizes.length]!), pieces.sink);
            at += sizes[k % sizes.length]!;
          }
          often.end(pieces.sink);
          expect(pieces.calls).toEqual(whole.calls);
          expect(often.counts).toEqual(once.counts);
        },
      ),
      { numRuns: 3000 },
    );
  });
});
