import type { Name, Step, Word } from "./compileFields.ts";
import type { WordMeaning } from "./linePattern.ts";
import type { NumberReader } from "./NumberReader.ts";
import { isDigit, isLetter, scanDate, scanHex, scanLetters } from "./scanText.ts";
import { DATE_STEP, HEX_STEP, LETTERS_STEP, NUMBER_STEP } from "./stepKinds.ts";

/** Whether `bytes` stand at `at`. */
export function matches(bytes: Uint8Array, line: Uint8Array, at: number, to: number): boolean {
  if (at + bytes.length > to) return false;
  for (let i = 0; i < bytes.length; i += 1) if (line[at + i] !== bytes[i]) return false;
  return true;
}

/** Whether a name stands at `at` and does not run on into further letters. */
export function isNamed(name: Name, line: Uint8Array, at: number, to: number): boolean {
  const next = at + name.length;
  if (next > to || line[at] !== name.first || (name.length > 1 && line[at + 1] !== name.second)) return false;
  if (name.length > 2 && !matches(name.bytes, line, at, to)) return false;
  return next === to || !isLetter(line[next]!) || !isLetter(line[next - 1]!);
}

/** The longest of the words that stands at `at`. */
export function findWord(words: readonly Word[], line: Uint8Array, at: number, to: number): Word | undefined {
  for (let k = 0; k < words.length; k += 1) if (isNamed(words[k]!, line, at, to)) return words[k];
  return undefined;
}

function skipBlanks(line: Uint8Array, at: number, to: number): number {
  let p = at;
  while (p < to && line[p] === BLANK) p += 1;
  return p;
}

/** A word or dashes in the number's place, anywhere in its padding. */
export function findInstead(
  step: Step,
  line: Uint8Array,
  at: number,
  to: number,
): { means: WordMeaning; next: number } | undefined {
  let p = skipBlanks(line, at, to);
  const word = findWord(step.words, line, p, to);
  if (word === undefined) return undefined;
  p += word.length;
  // A row of dashes is as long as the display is wide.
  if (word.first === word.second && !isLetter(word.first)) while (p < to && line[p] === word.first) p += 1;
  while (p < to && line[p] === BLANK && p - at < step.form.width) p += 1;
  return { means: word.means, next: p };
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
    case NUMBER_STEP:
      return number.read(line, at, to, step.form);
    case LETTERS_STEP:
      return within(step, at, scanLetters(line, at, to));
    case HEX_STEP:
      return within(step, at, scanHex(line, at, to, step.most));
    case DATE_STEP:
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
    const digit = step.digits[line[p]!]!;
    if (digit < 0) return -1;
    value = value * step.base + digit;
  }
  return value;
}

const BLANK = 0x20;
const TILDE = 0x7e;
