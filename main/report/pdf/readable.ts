/**
 * What the reports' typeface cannot write, in characters it can. Units and Greek letters as ISO 2955:1983 writes them
 * where characters are few; anything else that is missing by its Unicode number, so that nothing is left out unseen.
 * @param has  whether the typeface has a character
 */
export function readable(text: string, has: (codePoint: number) => boolean): string {
  let written = "";
  for (const character of text.normalize("NFC")) {
    const code = character.codePointAt(0)!; // each is one character
    if (has(code)) written += character;
    else if (code < 0x20 || code === 0x7f) written += " ";
    else written += inOtherWords[character] ?? `[U+${code.toString(16).toUpperCase().padStart(4, "0")}]`;
  }
  return written;
}

const inOtherWords: Readonly<Record<string, string>> = {
  "≥": ">=",
  "≤": "<=",
  "≈": "~",
  "≠": "!=",
  "√": "sqrt ",
  Δ: "Delta ",
  Ω: "Ohm",
  "\u2126": "Ohm",
  µ: "u",
  μ: "u",
  σ: "sigma",
  ν: "nu",
  α: "alpha",
  χ: "chi",
  Σ: "Sum",
  "∞": "infinity",
  "→": "->",
  "←": "<-",
  "✓": "yes",
  "\u00a0": " ",
  "\u2009": " ",
  "\u202f": " ",
  "\u2011": "-",
  "\u2032": "'",
};
