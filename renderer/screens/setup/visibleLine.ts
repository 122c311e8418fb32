/** A raw line with its control characters in sight: the Unicode pictures for them, so that STX and a lost CR are seen. */
export function visibleLine(raw: string): string {
  let shown = "";
  for (const character of raw) {
    const code = character.codePointAt(0) ?? 0;
    shown += code < 0x20 ? String.fromCodePoint(0x2400 + code) : code === 0x7f ? "\u2421" : character;
  }
  return shown;
}
