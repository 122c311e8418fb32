import { readFileSync } from "node:fs";
import { join } from "node:path";
import { programRoot } from "../../programRoot.ts";

export type Weight = "regular" | "bold";

/** The typeface lies in two files a weight: western letters, and those of central and eastern Europe. */
type FontFile = Weight | `${Weight}More`;

const FOLDER = join(programRoot, "node_modules", "@fontsource", "atkinson-hyperlegible-next", "files");
const file = (subset: string, weight: number) =>
  join(FOLDER, `atkinson-hyperlegible-next-${subset}-${weight}-normal.woff`);

const files: Readonly<Record<FontFile, string>> = {
  regular: file("latin", 400),
  bold: file("latin", 700),
  regularMore: file("latin-ext", 400),
  boldMore: file("latin-ext", 700),
};

/** As much of a font as the laying out needs; pdfkit's own type leaves it out. */
type KnownFont = {
  readonly font: { hasGlyphForCodePoint(code: number): boolean };
  widthOfString(text: string, size: number): number;
};

/** A stretch of text in one font file. */
export type Run = { readonly font: FontFile; readonly text: string; readonly width: number };

/** The fonts of one document: embedded there, and measured here. */
export class SheetFonts {
  readonly #doc: PDFKit.PDFDocument;
  readonly #known = new Map<FontFile, KnownFont>();

  constructor(doc: PDFKit.PDFDocument) {
    this.#doc = doc;
    for (const [name, path] of Object.entries(files)) doc.registerFont(name, readFileSync(path));
  }

  readonly has = (code: number): boolean => this.#holds("regular", code) || this.#holds("regularMore", code);

  /** Cuts a text where the font file changes. Every character must be one the typeface has. */
  runs(text: string, weight: Weight, size: number): Run[] {
    const runs: { font: FontFile; text: string }[] = [];
    for (const character of text) {
      const font: FontFile = this.#holds(weight, character.codePointAt(0)!) ? weight : `${weight}More`;
      const last = runs.at(-1);
      if (last?.font === font) last.text += character;
      else runs.push({ font, text: character });
    }
    return runs.map((run) => ({ ...run, width: this.#font(run.font).widthOfString(run.text, size) }));
  }

  #holds(name: FontFile, code: number): boolean {
    return this.#font(name).font.hasGlyphForCodePoint(code);
  }

  #font(name: FontFile): KnownFont {
    let known = this.#known.get(name);
    if (known === undefined) {
      // `_font` is what `font` has just made the current one.
      known = (this.#doc.font(name) as unknown as { _font: KnownFont })._font;
      this.#known.set(name, known);
    }
    return known;
  }
}
