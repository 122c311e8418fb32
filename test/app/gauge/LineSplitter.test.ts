import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type LineEnd, LineSplitter } from "../../../app/gauge/LineSplitter.ts";
import { bytesOfText } from "./formats.ts";

function linesOf(
  chunks: readonly Uint8Array[],
  end: LineEnd = "any",
  fill = false,
  maxLength = 12,
  after = 0,
): string[] {
  const lines: string[] = [];
  const splitter = new LineSplitter(maxLength, end, fill, after);
  const receiver = {
    line: (bytes: Uint8Array, from: number, to: number) => lines.push(String.fromCharCode(...bytes.subarray(from, to))),
    overlong: () => lines.push("(overlong)"),
  };
  for (const chunk of chunks) splitter.push(chunk, receiver);
  expect(splitter.dropped).toBe(lines.filter((line) => line === "(overlong)").length);
  splitter.end(receiver);
  return lines;
}

describe("LineSplitter", { timeout: 60_000 }, () => {
  it("cuts at CR, LF and both, and passes no empty line", () => {
    expect(linesOf([bytesOfText("a\rb\nc\r\n\n\rd\r\n")])).toEqual(["a", "b", "c", "d"]);
  });

  it("cuts only where its one line end stands", () => {
    expect(linesOf([bytesOfText("a\rb\r\nc\n")], "LF")).toEqual(["a\rb\r", "c"]);
    expect(linesOf([bytesOfText("a\r\nb\rc\r")], "CR")).toEqual(["a", "b", "c"]);
    expect(linesOf([bytesOfText("\u0002a\u0003\r\n\u0002b\u0003")], "ETX")).toEqual(["\u0002a", "\u0002b"]);
  });

  it("counts a check behind ETX to its line, and begins anew at STX where the check is cut", () => {
    const text = "\u0002a\u0003XY\u0002b\u0003Z\u0002c\u0003XY";
    expect(linesOf([bytesOfText(text)], "ETX", false, 12, 2)).toEqual([
      "\u0002a\u0003XY",
      "\u0002b\u0003Z",
      "\u0002c\u0003XY",
    ]);
    expect(linesOf([...text].map(bytesOfText), "ETX", false, 12, 2)).toEqual([
      "\u0002a\u0003XY",
      "\u0002b\u0003Z",
      "\u0002c\u0003XY",
    ]);
  });

  it("drops a line over its limit whole, counts it, and reads the next", () => {
    expect(linesOf([bytesOfText("123456789012\n1234567890123\nnext\n")])).toEqual([
      "123456789012",
      "(overlong)",
      "next",
    ]);
  });

  it("passes over fill characters at the beginning of a line, and only there and only if told", () => {
    expect(linesOf([bytesOfText("a\n\0\x7fb\nc\0\n")], "LF", true)).toEqual(["a", "b", "c\0"]);
    expect(linesOf([bytesOfText("a\n\0b\n")], "LF")).toEqual(["a", "\0b"]);
  });

  it("keeps a last line without its end back until it is told that there is no more", () => {
    const splitter = new LineSplitter(10);
    const lines: string[] = [];
    const receiver = {
      line: (b: Uint8Array, f: number, t: number) => lines.push(String.fromCharCode(...b.subarray(f, t))),
      overlong() {},
    };
    splitter.push(bytesOfText("ab\ncd"), receiver);
    expect(lines).toEqual(["ab"]);
    expect(splitter.forget()).toBe(true);
    splitter.push(bytesOfText("ef\ngh"), receiver);
    splitter.end(receiver);
    expect(lines).toEqual(["ab", "ef", "gh"]);
  });

  it("refuses a limit below one", () => {
    expect(() => new LineSplitter(0)).toThrow(RangeError);
  });

  it("gives the same lines for any chunking", () => {
    const text = fc.string({ unit: fc.constantFrom("a", "b", "\r", "\n", "\0", "\u0003", "\u0002"), maxLength: 60 });
    const end = fc.constantFrom<LineEnd>("CR", "LF", "ETX", "any");
    fc.assert(
      fc.property(
        text,
        end,
        fc.boolean(),
        fc.array(fc.integer({ min: 1, max: 7 }), { minLength: 1 }),
        (t, e, fill, sizes) => {
          const bytes = bytesOfText(t);
          const chunks: Uint8Array[] = [];
          for (let at = 0, k = 0; at < bytes.length; k += 1) {
            const size = sizes[k % sizes.length]!;
            chunks.push(bytes.subarray(at, at + size));
            at += size;
          }
          const after = e === "ETX" ? sizes.length % 3 : 0;
          expect(linesOf(chunks, e, fill, 12, after)).toEqual(linesOf([bytes], e, fill, 12, after));
        },
      ),
      { numRuns: 2000 },
    );
  });
});
