import type { Remark } from "../../app/ledger/check.ts";
import type { Language } from "./language.ts";

type Said = Record<Language, (about: string) => string>;

/**
 * What weakens a verdict or is warned of before a series, in words. A code that has none here, as a newer program may
 * write, is shown as it stands with what it is about.
 */
export function remarkWords(remark: Pick<Remark, "code" | "about">, language: Language): string {
  const about = remark.about ?? "";
  const said = Object.hasOwn(words, remark.code) ? words[remark.code] : undefined;
  if (said !== undefined) return said[language](about);
  return about === "" ? remark.code : `${remark.code}: ${about}`;
}

const words: Readonly<Record<string, Said>> = {};
