import { describe, expect, it } from "vitest";
import { LineDecoder } from "../../../app/gauge/LineDecoder.ts";
import type { LinePatternInput } from "../../../app/gauge/linePattern.ts";
import { collector, pattern } from "./collect.ts";
import { bytesOfText, lcg } from "./formats.ts";

type Method = "xor" | "sum256" | "byteSum10";

const check = (method: Method, text: string): string => {
  const codes = [...text].map((c) => c.charCodeAt(0));
  const sum = codes.reduce((total, code) => total + code, 0);
  if (method === "byteSum10") return `${sum % 10}`;
  const value = method === "xor" ? codes.reduce((total, code) => total ^ code, 0) : sum % 256;
  return value.toString(16).toUpperCase().padStart(2, "0");
};

/** The most forgiving pattern that still has the checksum: whatever passes, passes by it alone. */
const patternOf = (method: Method) => {
  const fields: LinePatternInput["fields"] = [
    { field: "ignored", what: "any", width: 9 },
    { field: "force", decimals: [0], wholeDigits: 1 },
    { field: "text", text: "*" },
    { field: "checksum", method, as: method === "byteSum10" ? "digit" : "HEX", first: 1, last: 3 },
  ];
  return pattern(fields, { unit: "N" });
};

const lineOf = (method: Method, i: number) => {
  const body = `${String(i).padStart(5, "0")} ab ${i % 10}*`;
  return body + check(method, body);
};

function readings(method: Method, lines: readonly string[]): number {
  const decoder = new LineDecoder(patternOf(method));
  decoder.push(bytesOfText(`${lines.join("\r\n")}\r\n`), collector().sink);
  return decoder.counts.readings;
}

describe("lines with a checksum", { timeout: 60_000 }, () => {
  it.each(["xor", "sum256"] as const)("passes no line with one altered byte (%s)", (method) => {
    const line = lineOf(method, 4711);
    expect(readings(method, [line])).toBe(1);
    const altered: string[] = [];
    for (let at = 0; at < line.length; at += 1) {
      for (let code = 0; code < 256; code += 1) {
        const other = String.fromCharCode(code);
        if (other !== line[at] && !/[\r\n]/.test(other)) altered.push(line.slice(0, at) + other + line.slice(at + 1));
      }
    }
    expect(altered.length).toBeGreaterThan(3000);
    expect(readings(method, altered)).toBe(0);
  });

  it.each([
    ["xor", 256],
    ["sum256", 256],
    ["byteSum10", 10],
  ] as const)(
    "lets random bursts pass no oftener than chance, within three simulation errors (%s, one in %d)",
    (method, chance) => {
      const random = lcg(31);
      const count = 200_000;
      const bursts = Array.from({ length: count }, (_, i) => {
        // Nine characters at random in front, all else as it was: the check is a draw from all it can be.
        const junk = Array.from({ length: 9 }, () => String.fromCharCode(32 + Math.floor(random() * 95))).join("");
        return junk + lineOf(method, i).slice(9);
      });
      const rate = readings(method, bursts) / count;
      const error = Math.sqrt(1 / chance / count);
      expect(rate).toBeLessThanOrEqual(1 / chance + 3 * error);
      expect(rate).toBeGreaterThan(0); // the search above would else have missed them all
    },
  );
});
