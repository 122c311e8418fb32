import { inBoth } from "../../../words/inBoth.ts";

/** What every chart of a proof offers. */
export const plotTexts = inBoth({
  about: [
    (title: string, sentence: string, n: string) =>
      `${title}. ${sentence} ${n} points: arrow keys walk through them; “As a table” holds the same.`,
    (title: string, sentence: string, n: string) =>
      `${title}. ${sentence} ${n} Punkte: Pfeiltasten gehen sie durch; „Als Tabelle“ sagt dasselbe.`,
  ],
  how: [
    "Point at a mark, or walk with the arrow keys, for its figures.",
    "Auf ein Zeichen zeigen oder mit den Pfeiltasten gehen: Es sagt seine Zahlen.",
  ],
  asTable: ["As a table", "Als Tabelle"],
  savePng: [(title: string) => `Save as PNG: ${title}`, (title: string) => `Als PNG speichern: ${title}`],
  saveSvg: [(title: string) => `Save as SVG: ${title}`, (title: string) => `Als SVG speichern: ${title}`],
  tableOf: [(title: string) => `As a table: ${title}`, (title: string) => `Als Tabelle: ${title}`],
});
