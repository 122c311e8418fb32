import { describe, expect, it } from "vitest";
import { languageOf, localeOf } from "../../../renderer/words/language.ts";
import { parseNumber } from "../../../renderer/words/parseNumber.ts";

describe("languageOf", () => {
  it("follows the machine's order and falls back to English", () => {
    expect(languageOf("system", ["fr-FR", "de-AT", "en-US"])).toBe("de");
    expect(languageOf("system", ["fr-FR"])).toBe("en");
    expect(languageOf("en", ["de-DE"])).toBe("en");
  });
});

describe("localeOf", () => {
  it("keeps the machine's own place for the language", () => {
    expect(localeOf("de", ["en-US", "de-AT"])).toBe("de-AT");
    expect(localeOf("de", ["en-US"])).toBe("de-DE");
  });
});

describe("parseNumber", () => {
  it("takes decimal comma and point", () => {
    expect([parseNumber("17,92"), parseNumber("17.92"), parseNumber("\u22120,5")]).toEqual([17.92, 17.92, -0.5]);
  });
  it("tells nothing typed from something that is no number", () => {
    expect([parseNumber("  "), parseNumber("abc"), parseNumber("1e999")]).toEqual([
      undefined,
      "unreadable",
      "unreadable",
    ]);
  });
});
