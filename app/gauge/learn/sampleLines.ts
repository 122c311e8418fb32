import type { LinePattern } from "../linePattern.ts";

/** One line of a sample; `order` is its place among all lines, read or not. */
export type SampleLine = { readonly text: string; readonly order: number };

export type LineEnds = { readonly terminator: LinePattern["terminator"]; readonly fill: boolean };

/** How lines end, from counts; undefined when nothing in the sample ends a line. */
export function findLineEnds(text: string): LineEnds | undefined {
  const count = (pattern: RegExp) => text.match(pattern)?.length ?? 0;
  const cr = count(/\r/g);
  const lf = count(/\n/g);
  const both = count(/\r\n/g);
  const filled = count(fillBehindEnd) * 2 > Math.max(cr, lf, 1);
  if (cr + lf === 0) return text.includes(etx) ? { terminator: "ETX", fill: filled } : undefined;
  if (both >= 0.9 * Math.max(cr, lf)) return { terminator: "CRLF", fill: filled };
  if (cr <= 0.1 * lf) return { terminator: "LF", fill: filled };
  if (lf <= 0.1 * cr) return { terminator: "CR", fill: filled };
  return { terminator: "any", fill: filled };
}

// Built from strings: control characters by their codes read better than in a pattern.
const etx = "\u0003";
const fill = "\u0000\u007f";
const fillBehindEnd = new RegExp(`[\r\n${etx}][${fill}]`, "g");
const leadingFill = new RegExp(`^[\r\n${fill}]+|[\r\n]+$`, "g");
const separators = { CR: /\r\n?/, LF: /\r*\n/, CRLF: /\r*\n/, ETX: etx, any: /[\r\n]+/ } as const;

/**
 * Cuts the sample as the decoder will. Lines that are no 7-bit ASCII, or too long, keep their place in the order and are
 * left out. The last piece has no end and is left out too, unless it is all there is.
 */
export function sampleLines(text: string, ends: LineEnds): SampleLine[] {
  const pieces = text.split(separators[ends.terminator]);
  const last = pieces.pop();
  if (pieces.length === 0 && last !== undefined) pieces.push(last);
  const lines: SampleLine[] = [];
  let order = 0;
  for (const piece of pieces) {
    const line = piece.replace(ends.fill ? leadingFill : /^[\r\n]+|[\r\n]+$/g, "");
    if (line === "") continue;
    if (line.length <= 240 && !/[\x80-\xff]/.test(line)) lines.push({ text: line, order });
    order += 1;
  }
  return lines;
}

/** Bytes as a string of the same length, one character a byte. */
export function textOf(bytes: Uint8Array): string {
  let text = "";
  for (let from = 0; from < bytes.length; from += 4096)
    text += String.fromCharCode(...bytes.subarray(from, from + 4096));
  return text;
}

/** Samples up to this size are looked at line by line. */
export const whole = 192 * 1024;

/** The sample itself, or of a long one its first part and pieces spread over the rest, cut at line ends. */
export function pickBytes(bytes: Uint8Array): Uint8Array[] {
  if (bytes.length <= whole) return [bytes];
  const picks = [bytes.subarray(0, whole / 3)];
  const piece = 8 * 1024;
  for (let k = 1; k <= 16; k += 1) {
    const from = Math.floor((k * (bytes.length - piece)) / 16);
    picks.push(bytes.subarray(from, from + piece));
  }
  return picks;
}
