import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

const resolve = createRequire(import.meta.url).resolve;
const load = (script: string, weight: number) =>
  readFileSync(
    resolve(`@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-${script}-${weight}-normal.woff`),
  );

/** The fonts of every page that is printed, embedded as they are: plain and bold, each for Latin and for its extensions. */
export function reportFonts(): Readonly<Record<FontName, Buffer>> {
  return {
    plain: load("latin", 400),
    bold: load("latin", 700),
    plainMore: load("latin-ext", 400),
    boldMore: load("latin-ext", 700),
  };
}

export type FontName = "plain" | "bold" | "plainMore" | "boldMore";

/** A text cut into runs that one font has the letters for. */
export function fontRuns(text: string, bold: boolean): { readonly font: FontName; readonly text: string }[] {
  const runs: { font: FontName; text: string }[] = [];
  for (const letter of text) {
    const more = isExtended(letter.codePointAt(0)!);
    const font: FontName = bold ? (more ? "boldMore" : "bold") : more ? "plainMore" : "plain";
    const last = runs.at(-1);
    if (last?.font === font) last.text += letter;
    else runs.push({ font, text: letter });
  }
  return runs;
}

/** What the Latin file leaves to the extended one (Czech, Polish, Turkish …). */
const isExtended = (code: number) =>
  (code >= 0x100 && code < 0x2000 && code !== 0x131 && code !== 0x152 && code !== 0x153) ||
  (code >= 0x2c60 && code < 0x2c80) ||
  (code >= 0xa720 && code < 0xa800);
