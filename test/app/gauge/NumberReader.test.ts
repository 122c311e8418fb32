import { describe, expect, it } from "vitest";
import type { PatternField } from "../../../app/gauge/linePattern.ts";
import { NumberReader } from "../../../app/gauge/NumberReader.ts";
import { formOf } from "../../../app/gauge/numberForm.ts";
import { pattern } from "./collect.ts";
import { bytesOfText, lcg } from "./formats.ts";

type ForceField = Extract<PatternField, { field: "force" }>;

const force = (form: Partial<ForceField>): ForceField => {
  const field = pattern([{ field: "force", decimalMark: ".", ...form } as ForceField], { unit: "N" }).fields[0]!;
  return field as ForceField; // the first and only field just given
};

function read(text: string, form: Partial<ForceField> = {}): number | undefined {
  const reader = new NumberReader();
  const bytes = bytesOfText(text);
  const end = reader.read(bytes, 0, bytes.length, formOf(force(form)));
  return end === bytes.length ? Number(`${reader.mantissa}e${-reader.decimals}`) : undefined;
}

describe("NumberReader", { timeout: 60_000 }, () => {
  it("reads a million random decimals as JavaScript's own parser does, to the bit", () => {
    const random = lcg(99);
    const reader = new NumberReader();
    const form = formOf(force({ sign: "maybe" }));
    const bytes = new Uint8Array(24);
    let wrong = 0;
    for (let i = 0; i < 1_000_000; i += 1) {
      const places = Math.floor(random() * 7);
      const text = `${random() < 0.5 ? "-" : ""}${(random() * 10 ** (random() * 8)).toFixed(places)}`;
      for (let k = 0; k < text.length; k += 1) bytes[k] = text.charCodeAt(k);
      const end = reader.read(bytes, 0, text.length, form);
      const value = reader.mantissa / 10 ** reader.decimals;
      // Number("-0.00") is -0; the reader knows one zero.
      if (end !== text.length || value !== Number(text)) wrong += 1;
    }
    expect(wrong).toBe(0);
  });

  it.each(["1", "12.34", "-0.5", "+7", "000.010", "999999999999999", "0.123456789"])("reads %s", (text) => {
    expect(read(text)).toBe(Number(text));
  });

  it.each([
    "",
    "+",
    "-",
    "12.",
    ".5",
    "+00x",
    "NaN",
    "Inf",
    "Infinity",
    "0x1F",
    "1e5",
    "1.2.3",
    "--1",
    "1-",
    "1 2",
    "1234567890123456",
    "0.1234567891",
  ])("refuses %j", (text) => {
    expect(read(text)).toBeUndefined();
  });

  it("reads an exponent only where the form has one, and then wants it", () => {
    expect(read("1.25e+3", { exponent: true })).toBe(1250);
    expect(read("1.25E-2", { exponent: true })).toBe(0.0125);
    expect(read("1.25e+3")).toBeUndefined();
    for (const text of ["1.25", "1.25e", "1.25e+", "1.25e1234", "1.25e99"])
      expect(read(text, { exponent: true })).toBeUndefined();
  });

  it("keeps to the width, the filled digits and the sign a form asks for", () => {
    expect(read("  -1.50", { width: 7 })).toBe(-1.5);
    expect(read(" -1.50", { width: 7 })).toBeUndefined();
    expect(read("   -1.50", { width: 7, mayGrow: true })).toBe(-1.5);
    expect(read("1.50   ", { width: 7, align: "left" })).toBe(1.5);
    expect(read("-   1.5", { width: 7, signGap: true })).toBe(-1.5);
    expect(read("0012.5", { wholeDigits: 4 })).toBe(12.5);
    expect(read("012.5", { wholeDigits: 4 })).toBeUndefined();
    expect(read("12.5", { sign: "always" })).toBeUndefined();
    expect(read(" 12.5", { sign: "column" })).toBe(12.5);
    expect(read("12.5", { sign: "column" })).toBeUndefined();
    expect(read("12.5-", { sign: "after" })).toBe(-12.5);
    expect(read("12.5 ", { sign: "after" })).toBe(12.5);
    expect(read(".5", { mayOmitZero: true })).toBe(0.5);
    expect(read(".", { mayOmitZero: true })).toBeUndefined();
  });

  it("reads groups of thousands only in threes", () => {
    expect(read("12 345.5", { thousands: " " })).toBe(12345.5);
    expect(read("1,234,567", { thousands: "," })).toBe(1234567);
    for (const text of ["12 34", "1234 567", "12345", "1 2345"]) expect(read(text, { thousands: " " })).toBeUndefined();
  });

  it("knows no negative zero", () => {
    expect(Object.is(read("-0.00"), 0)).toBe(true);
  });
});
