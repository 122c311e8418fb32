/** Each answers the position behind what it found at `at`, or -1. */

/** Letters, at least one. */
export function scanLetters(line: Uint8Array, at: number, to: number): number {
  let p = at;
  while (p < to && isLetter(line[p]!)) p += 1;
  return p > at ? p : -1;
}

/** Hexadecimal digits, at least one and at most `most`. */
export function scanHex(line: Uint8Array, at: number, to: number, most: number): number {
  let p = at;
  while (p < to && p - at < most && isHex(line[p]!)) p += 1;
  return p > at ? p : -1;
}

/** `H:MM`, `H:MM:SS`, `HH:MM:SS` and decimals of a second behind `mark`, in the range a clock has. */
export function scanClock(line: Uint8Array, at: number, to: number, mark: number): number {
  let p = at;
  while (p < to && p - at < 3 && isDigit(line[p]!)) p += 1;
  if (p === at || p - at > 2) return -1;
  for (let parts = 0; parts < 2; parts += 1) {
    if (p + 2 >= to || line[p] !== COLON || !isDigit(line[p + 1]!) || line[p + 1]! > FIVE || !isDigit(line[p + 2]!)) {
      return parts === 1 && (p >= to || line[p] !== COLON) ? p : -1;
    }
    p += 3;
  }
  if (p < to && line[p] === mark && p + 1 < to && isDigit(line[p + 1]!)) {
    p += 1;
    while (p < to && isDigit(line[p]!)) p += 1;
  }
  return p;
}

/** Two or four digits, a mark, two digits, the same mark, two or four digits: a date in any of the usual orders. */
export function scanDate(line: Uint8Array, at: number, to: number): number {
  const first = digitsAt(line, at, to);
  const mark = line[at + first];
  if ((first !== 2 && first !== 4) || at + first + 3 >= to || (mark !== DASH && mark !== SLASH && mark !== POINT))
    return -1;
  const second = at + first + 1;
  if (digitsAt(line, second, to) !== 2 || line[second + 2] !== mark) return -1;
  const third = digitsAt(line, second + 3, to);
  return third === 2 || third === 4 ? second + 3 + third : -1;
}

function digitsAt(line: Uint8Array, at: number, to: number): number {
  let p = at;
  while (p < to && isDigit(line[p]!)) p += 1;
  return p - at;
}

export const isDigit = (byte: number) => byte >= 0x30 && byte <= 0x39;
export const isLetter = (byte: number) => ((byte | 0x20) - 0x61) >>> 0 < 26;
const isHex = (byte: number) => isDigit(byte) || (byte >= 0x41 && byte <= 0x46) || (byte >= 0x61 && byte <= 0x66);

const DASH = 0x2d;
const POINT = 0x2e;
const SLASH = 0x2f;
const FIVE = 0x35;
const COLON = 0x3a;
