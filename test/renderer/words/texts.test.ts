import { describe, expect, it } from "vitest";

type Spoken = Record<string, string | ((...parts: unknown[]) => string)>;
type Texts = { readonly en: Spoken; readonly de: Spoken };

const modules = import.meta.glob<Record<string, unknown>>(
  [
    "../../../renderer/**/*.{ts,tsx}",
    "!../../../renderer/main.tsx",
    "../../../app/words/*.ts",
    "../../../main/report/**/*Texts.ts",
    "!../../../main/report/round/sheetTexts.ts", // holds lists; its own test reads it in both languages
  ],
  { eager: true },
);
const isTexts = (value: unknown): value is Texts =>
  typeof value === "object" && value !== null && "en" in value && "de" in value && typeof value.en === "object";
const all = Object.entries(modules).flatMap(([path, exported]) =>
  Object.entries(exported)
    .filter((entry): entry is [string, Texts] => isTexts(entry[1]))
    .map(([name, texts]) => [`${path.replace("../../../", "")} ${name}`, texts] as const),
);
/** Words that are the same in both languages by right: units, names of standards, and what both borrow. */
const alike =
  /^(s|°C|kN|warm|Port|Adapter|adapter|routine|Routine|Demo|optional|Name|PIN|U .*|u, .*|English|Deutsch|\S+ m?s)$/;
const say = (word: Spoken[string]) => (typeof word === "string" ? word : word("17.92", "18.20", "x", "y", "z"));

describe("texts", () => {
  it("are found in every place", () => {
    expect(all.length).toBeGreaterThan(8);
  });

  it.each(all)("%s: none is missing or empty in either language", (_name, texts) => {
    expect(Object.keys(texts.de)).toEqual(Object.keys(texts.en));
    for (const language of ["en", "de"] as const) {
      for (const [key, word] of Object.entries(texts[language])) {
        expect(say(word).trim(), `${language} ${key}`).not.toBe("");
        expect(say(word), `${language} ${key}`).not.toMatch(/undefined|\[object|TODO/);
      }
    }
  });

  it.each(all)("%s: German is not English left standing", (_name, texts) => {
    const same = Object.keys(texts.en).filter((key) => {
      const english = say(texts.en[key]!);
      return english === say(texts.de[key]!) && !alike.test(english);
    });
    expect(same).toEqual([]);
  });

  it.each(all)("%s: a figure put in comes out in both languages", (_name, texts) => {
    for (const [key, word] of Object.entries(texts.en)) {
      if (typeof word !== "function") continue;
      for (const language of ["en", "de"] as const) expect(say(texts[language][key]!), key).toMatch(/17\.92|x/);
    }
  });
});
