import type { PcSettings } from "../../app/contract/programViews.ts";
import type { Language } from "../../app/words/Language.ts";

/** Forms of numbers and dates where the machine names no place for the language. */
const fallback: Record<Language, string> = { en: "en-GB", de: "de-DE" };

/** The language to speak: the one chosen, else the first of the machine's that we have. */
export function languageOf(choice: PcSettings["language"], preferred: readonly string[]): Language {
  if (choice !== "system") return choice;
  for (const locale of preferred) {
    const language = locale.slice(0, 2).toLowerCase();
    if (language === "de" || language === "en") return language;
  }
  return "en";
}

/** The locale for numbers and dates: the machine's own for that language ("de-AT"), else the plain one. */
export function localeOf(language: Language, preferred: readonly string[]): string {
  return preferred.find((locale) => locale.toLowerCase().startsWith(`${language}-`)) ?? fallback[language];
}
