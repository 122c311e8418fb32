import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { canonicalJson } from "../../../app/ledger/canonicalJson.ts";

// RFC 8785: appendix B, sections 3.2.2 to 3.2.4.
const published = JSON.parse(readFileSync("test/published/rfc8785-canonical-json.json", "utf8"));

function doubleOf(hex: string): number {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${hex}`));
  return view.getFloat64(0);
}

describe("canonicalJson", () => {
  it("writes the RFC's document to the byte", () => {
    const text = canonicalJson(JSON.parse(published.inputs.document));
    expect(Buffer.from(text, "utf8").toString("hex")).toBe(published.expected.documentUtf8.published);
  });

  it("sorts the RFC's members by UTF-16 code units, not by code points", () => {
    // The text itself is looked at: a parsed object lists "1" first whatever the text says.
    const text = canonicalJson(JSON.parse(published.inputs.toSort));
    const places = (published.expected.sortedValues.published as string[]).map((value) => text.indexOf(`"${value}"`));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(Math.min(...places)).toBeGreaterThan(0);
  });

  it.each(published.expected.numbers.published as { ieee754: string; text: string }[])(
    "prints the double $ieee754 as $text",
    ({ ieee754, text }) => {
      expect(canonicalJson(doubleOf(ieee754))).toBe(text);
    },
  );

  it.each(published.expected.numbers.refused as string[])("refuses the double %s", (hex) => {
    expect(() => canonicalJson(doubleOf(hex))).toThrow(TypeError);
  });

  it("does not care in which order members were set", () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string({ unit: "grapheme" }), fc.jsonValue()), (record) => {
        const turned = Object.fromEntries(Object.entries(record).reverse());
        expect(canonicalJson(turned)).toBe(canonicalJson(record));
      }),
    );
  });

  it("is JSON that reads back as the value it was written from", () => {
    fc.assert(
      fc.property(fc.jsonValue({ noUnicodeString: false }), (value) => {
        expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
    );
  });

  it("gives the same text for what it wrote itself", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const text = canonicalJson(value);
        expect(canonicalJson(JSON.parse(text))).toBe(text);
      }),
    );
  });

  it("leaves out members that are undefined, as JSON does", () => {
    expect(canonicalJson({ b: undefined, a: 1 })).toBe('{"a":1}');
  });

  it.each([
    ["a lone surrogate", "\ud800"],
    ["a lone surrogate as a name", { "\udc00": 1 }],
    ["undefined in a list", [undefined]],
    ["a bigint", 1n],
    ["a function", () => 1],
    ["a Date", new Date(0)],
    ["a Map", new Map()],
  ])("refuses %s", (_, value) => {
    expect(() => canonicalJson(value)).toThrow(TypeError);
  });
});
