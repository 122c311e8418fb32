import { readable } from "./readable.ts";
import type { Run, SheetFonts, Weight } from "./SheetFonts.ts";

/** A line as it will stand: its runs from left to right, and how wide they are together. */
export type Line = { readonly runs: readonly Run[]; readonly width: number };
export type Style = { readonly size: number; readonly weight: Weight };

/** Breaks a text into lines no wider than `width`, at blanks; a word too long for a line is cut. */
export function layLines(fonts: SheetFonts, text: string, { size, weight }: Style, width: number): Line[] {
  const measured = (part: string): Line => {
    const runs = fonts.runs(part, weight, size);
    return { runs, width: runs.reduce((sum, run) => sum + run.width, 0) };
  };
  return text.split(/\r?\n/).flatMap((paragraph) => {
    const lines: string[] = [];
    let line = "";
    for (const word of readable(paragraph, fonts.has).split(/ +/)) {
      const longer = line === "" ? word : `${line} ${word}`;
      if (measured(longer).width <= width) {
        line = longer;
        continue;
      }
      if (line !== "") lines.push(line);
      line = word;
      while (measured(line).width > width && line.length > 1) {
        const fits = fittingLength(line, (part) => measured(part).width <= width);
        lines.push(line.slice(0, fits));
        line = line.slice(fits);
      }
    }
    return [...lines, line].map(measured);
  });
}

/** How many characters of a word fit; at least one. */
function fittingLength(word: string, fits: (part: string) => boolean): number {
  let [low, high] = [1, word.length];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (fits(word.slice(0, middle))) low = middle;
    else high = middle - 1;
  }
  return low;
}
