/** A number as it stands in a line, in its parts. */
export type NumberText = {
  readonly sign: "" | "+" | "-";
  readonly signAfter: boolean;
  /** Blanks between sign and digits. */
  readonly gap: number;
  /** Digits before the mark, thousands marks taken out. */
  readonly whole: string;
  readonly mark: "" | "." | ",";
  readonly decimals: string;
  readonly exponent: string;
  readonly grouped: boolean;
  readonly value: number;
};

export type Token = {
  readonly kind: "number" | "clock" | "date" | "word" | "run" | "mark";
  readonly text: string;
  readonly at: number;
  readonly end: number;
  readonly number?: NumberText;
};

/** How numbers are written in this stream; the other of point and comma is then a separator. */
export type NumberMode = {
  readonly mark: "." | ",";
  readonly thousands: "" | " " | "," | "." | "'";
  /** A sign right behind digits belongs to the number after it ("0017+012.3"), not to a date or a range. */
  readonly glued: boolean;
};

const torque =
  "(?:da|[kdcmM])?[Nn][.*-]?(?:cm|mm|m)|(?:da|[kdcmM])?N (?:cm|mm|m)|(?:lbf?|ozf?|kgf?|kp|g)[ .*-]?(?:ft|in|cm|mm)|(?:kgf?|kp)[ .*-]?m|" +
  "(?:ft|in)[ .*-]?(?:lbf?|ozf?)s?|(?:FT|IN)[ .*-]?(?:LBF?|OZF?)S?|(?:LBF?|OZF?|KGF?|KP)[ .*-]?(?:FT|IN|CM|M)|NM";
// A unit over another (N/mm) is one word, so that its first half is not taken for a force.
const word = `(?:${torque})(?![A-Za-z])|[Oo][./][Ll]\\.?|[A-Za-z]+(?:/[A-Za-z]+\\d?)*`;

/** Makes the splitter of lines into tokens for one way of writing numbers. Blanks lie between tokens. */
export function tokenizer(mode: NumberMode): (line: string) => Token[] {
  const mark = mode.mark === "." ? "\\." : ",";
  const group = mode.thousands.replace(".", "\\.");
  const digits = group === "" ? `\\d+` : `(?:\\d{1,3}(?:${group}\\d{3})+(?!\\d)|\\d+)`;
  const figure = `(?:${digits}(?:${mark}\\d+)?|${mark}\\d+)(?:[eE][+-]?\\d{1,3}(?![A-Za-z0-9]))?`;
  // Where the comma separates, it begins a fraction of a second only with three digits that end there.
  const fraction = mode.mark === "," ? "[.,]\\d+" : "\\.\\d+|,\\d{3}(?![\\d.,])";
  const glued = mode.glued ? "" : "(?<!\\d)";
  const pattern = new RegExp(
    `(?<clock>(?<!\\d)\\d{1,2}:[0-5]\\d(?::[0-5]\\d(?:${fraction})?)?(?![\\d:]))|` +
      `(?<date>(?<!\\d)(?:\\d{4}([-./])\\d\\d\\3\\d\\d(?!\\d)|\\d\\d([-./])\\d\\d\\4(?:\\d{4}|\\d\\d)(?!\\d)))|` +
      `(?<number>(?:${glued}[+-] *)?${figure}(?:[+-](?![\\d+.,-]))?)|(?<word>${word})|(?<run>[-.]{2,}|(?<same>[_*?#=])\\k<same>+)|(?<mark>[^ ])`,
    "g",
  );
  return (line) => Array.from(line.matchAll(pattern), (found) => tokenOf(found, mode));
}

function tokenOf(found: RegExpExecArray | RegExpMatchArray, mode: NumberMode): Token {
  const groups = found.groups!;
  const text = found[0];
  const at = found.index!;
  for (const kind of ["clock", "date", "number", "word", "run"] as const) {
    if (groups[kind] === undefined) continue;
    const token = { kind, text, at, end: at + text.length };
    return kind === "number" ? { ...token, number: numberText(text, mode) } : token;
  }
  return { kind: "mark", text, at, end: at + text.length };
}

function numberText(text: string, mode: NumberMode): NumberText {
  const parts = /^([+-]?)( *)([^eE+-]*)([eE][+-]?\d+)?([+-]?)$/.exec(text)!;
  const [, front, gap, body, exponent, back] = parts as unknown as [string, string, string, string, string?, string?];
  const [grouped, decimals] = body.split(mode.mark) as [string, string?];
  const whole = mode.thousands === "" ? grouped : grouped.split(mode.thousands).join("");
  const sign = (front || back || "") as NumberText["sign"]; // the pattern lets only these through
  const size = Number(`${whole || "0"}.${decimals ?? "0"}${exponent ?? ""}`);
  return {
    sign,
    signAfter: front === "" && (back ?? "") !== "",
    gap: gap.length,
    whole,
    mark: decimals === undefined ? "" : mode.mark,
    decimals: decimals ?? "",
    exponent: exponent ?? "",
    grouped: whole.length !== grouped.length,
    value: sign === "-" ? -size : size,
  };
}

/** One letter a kind, from an alphabet that no line of seven-bit text can hold. */
export const shapes = { number: "ν", clock: "χ", date: "η", word: "λ", run: "ρ" } as const;

/** The kinds of a line's tokens in order: lines of one form share it. */
export function signatureOf(tokens: readonly Token[]): string {
  let signature = "";
  for (const token of tokens) signature += token.kind === "mark" ? token.text : shapes[token.kind];
  return signature;
}
