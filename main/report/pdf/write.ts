import { fontRuns } from "./fonts.ts";
import type { Pdf } from "./startPdf.ts";

export type WriteOptions = {
  readonly width: number;
  readonly size: number;
  readonly bold?: boolean;
  readonly colour?: string;
  /** Lines at most; what is longer ends in an ellipsis. */
  readonly lines?: number;
  readonly align?: "left" | "right" | "center";
};

/**
 * Text in a box of a width, each letter in the font that has it. Text that is longer than its lines is cut off there.
 * @returns  the y below it
 */
export function write(doc: Pdf, text: string, x: number, y: number, options: WriteOptions): number {
  const { width, size, bold = false, colour = "#000000", lines, align = "left" } = options;
  const runs = fontRuns(text === "" ? " " : text, bold);
  doc.fillColor(colour).fontSize(size);
  const lineHeight = doc.font(bold ? "bold" : "plain").currentLineHeight(true);
  const height = lines === undefined ? undefined : lines * lineHeight + 0.5;
  for (const [i, run] of runs.entries()) {
    const more = {
      width,
      align,
      continued: i < runs.length - 1,
      ...(height === undefined ? {} : { height, ellipsis: true }),
    };
    doc.font(run.font);
    if (i === 0) doc.text(run.text, x, y, more);
    else doc.text(run.text, more);
  }
  return lines === undefined ? doc.y : Math.min(doc.y, y + lines * lineHeight);
}
