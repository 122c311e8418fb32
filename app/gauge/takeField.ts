import { op, type Step, type Word } from "./compileFields.ts";
import type { NumberReader } from "./NumberReader.ts";
import { isDigit, isLetter, scanDate, scanHex, scanLetters } from "./scanText.ts";

/** Whether `bytes` stand at `at`. */
export function matches(bytes: Uint8Array, line: Uint8Array, at: number, to: number): boolean {
  if (at + bytes.length > to) return false;
  for (let i = 0; i < bytes.length; i += 1) if (line[at + i] !== bytes[i]) return false;
  return true;
}

/** The longest of the words that stands at `at` and does not run on into further letters. */
export function findWord(words: readonly Word[], line: Uint8Array, at: number, to: number): Word | undefined {
  for (const word of words) {
    const next = at + word.bytes.length;
    if (!matches(word.bytes, line, at, to)) continue;
    if (next < to && isLetter(line[next]!) && isLetter(line[next - 1]!)) continue;
    return word;
  }
  return undefined;
}

export function skipBlanks(line: Uint8Array, at: number, to: number): number {
  let p = at;
  while (p < to && line[p] === BLANK) p += 1;
  return p;
}

export function takeBlanks(step: Step, line: Uint8Array, at: number, to: number): number {
  let p = at;
  while (p < to && line[p] === BLANK) p += 1;
  return p - at >= step.least && p - at <= step.most ? p : -1;
}

export function takeDigits(step: Step, line: Uint8Array, at: number, to: number): number {
  let p = at;
  while (p < to && isDigit(line[p]!)) p += 1;
  return p - at >= step.least && p - at <= step.most ? p : -1;
}

/** Passes over what a pattern ignores; still only over what it says stands there. */
export function takeIgnored(step: Step, number: NumberReader, line: Uint8Array, at: number, to: number): number {
  switch (step.op) {
    case op.number:
      return number.read(line, at, to, step.form);
    case op.letters:
      return within(step, at, scanLetters(line, at, to));
    case op.hex:
      return within(step, at, scanHex(line, at, to, step.most));
    case op.date:
      return scanDate(line, at, to);
    default:
      return takePrintable(step, line, at, to);
  }
}

const within = (step: Step, at: number, next: number) =>
  next - at >= step.least && next - at <= step.most ? next : -1;

/** Exactly the width, or up to the line's end. */
function takePrintable(step: Step, line: Uint8Array, at: number, to: number): number {
  const next = Math.min(to, at + step.most);
  for (let p = at; p < next; p += 1) if (line[p]! < BLANK || line[p]! > TILDE) return -1;
  return next - at >= step.least ? next : -1;
}

/** The check as it stands in the line, or -1 where it is not written as the pattern says. */
export function readCheck(step: Step, line: Uint8Array, at: number): number {
  let value = 0;
  for (let p = at; p < at + step.least; p += 1) {
    const byte = line[p]!;
    if (isDigit(byte)) value = value * (step.hex ? 16 : 10) + byte - ZERO;
    // `byte` holds the letter A in the case the gauge uses; the other case is not what it sent.
    else if (step.hex && byte >= step.byte && byte < step.byte + 6) value = value * 16 + byte - step.byte + 10;
    else return -1;
  }
  return value;
}

/** Seconds since midnight of what `scanClock` found. */
export function clockSeconds(line: Uint8Array, from: number, to: number): number {
  let total = 0;
  let part = 0;
  let parts = 0;
  let p = from;
  for (; p < to && (isDigit(line[p]!) || line[p] === COLON); p += 1) {
    if (line[p] !== COLON) part = part * 10 + line[p]! - ZERO;
    else {
      total = (total + part) * 60;
      part = 0;
      parts += 1;
    }
  }
  total += part;
  if (parts === 1) total *= 60; // hours and minutes only
  let fraction = 0;
  let scale = 1;
  for (p += 1; p < to; p += 1) {
    fraction = fraction * 10 + line[p]! - ZERO;
    scale *= 10;
  }
  return (total * scale + fraction) / scale; // one rounding
}

const BLANK = 0x20;
const ZERO = 0x30;
const COLON = 0x3a;
const TILDE = 0x7e;
