import type { LinePattern } from "../linePattern.ts";

/** One line of a sample; `order` is its place among all lines, read or not. */
export type SampleLine = { readonly text: string; readonly order: number };

export type LineEnds = {
  readonly terminator: LinePattern["terminator"];
  readonly fill: boolean;
  readonly afterEnd: number;
};

/** How lines end, from counts; undefined when nothing in the sample ends a line. */
export function findLineEnds(text: string): LineEnds | undefined {
  const count = (pattern: RegExp) => text.match(pattern)?.length ?? 0;
  const cr = count(/\r/g);
  const lf = count(/\n/g);
  const both = count(/\r\n/g);
  const filled = count(fillBehindEnd) * 2 > Math.max(cr, lf, 1);
  if (cr + lf === 0)
    return text.includes(etx) ? { terminator: "ETX", fill: filled, afterEnd: afterEtx(text) } : undefined;
  if (both >= 0.9 * Math.max(cr, lf)) return { terminator: "CRLF", fill: filled, afterEnd: 0 };
  if (cr <= 0.1 * lf) return { terminator: "LF", fill: filled, afterEnd: 0 };
  if (lf <= 0.1 * cr) return { terminator: "CR", fill: filled, afterEnd: 0 };
  return { terminator: "any", fill: filled, afterEnd: 0 };
}

// Built from strings: control characters by their codes read better than in a pattern.
const etx = "\u0003";
const fill = "\u0000\u007f";
const fillBehindEnd = new RegExp(`[\r\n${etx}][${fill}]`, "g");
const behindFrame = new RegExp(`${etx}([^${etx}\\u0002]*)\\u0002`, "g");
const leadingFill = new RegExp(`^[\r\n${fill}]+|[\r\n]+$`, "g");
const separators = { CR: /\r\n?/, LF: /\r*\n/, CRLF: /\r*\n/, ETX: etx, any: /[\r\n]+/ } as const;

/**
 * Cuts the sample as the decoder will. Lines that are no 7-bit ASCII, or too long, keep their place in the order and are
 * left out. The last piece has no end and is left out too, unless it is all there is.
 */
export function sampleLines(text: string, ends: LineEnds): SampleLine[] {
  const pieces = ends.afterEnd > 0 ? framesOf(text, ends.afterEnd) : text.split(separators[ends.terminator]);
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

/** Characters between ETX and the next STX, where nearly all frames have as many: a check behind the frame. */
function afterEtx(text: string): number {
  const between = Array.from(text.matchAll(behindFrame), (found) => found[1]!.length);
  const usual = between.filter((n) => n === between[between.length >> 1]).length;
  const after = between[between.length >> 1] ?? 0;
  return usual >= 0.8 * between.length && after <= 3 ? after : 0;
}

/** Frames with what follows their ETX; the last piece is what has no end. */
function framesOf(text: string, after: number): string[] {
  const frames: string[] = [];
  let from = 0;
  for (let at = text.indexOf(etx); at >= 0 && at + after < text.length; at = text.indexOf(etx, from)) {
    frames.push(text.slice(from, at + 1 + after));
    from = at + 1 + after;
  }
  return [...frames, text.slice(from)];
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
