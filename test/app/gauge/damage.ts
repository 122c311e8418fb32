import { bytesOfText, type Format, lcg, shownReadings } from "./formats.ts";

export type SentLine = {
  readonly text: string;
  /** Unharmed as the gauge sent it. */
  readonly whole: boolean;
  readonly cut: boolean;
  readonly value: number;
};

/** A stream of which a share of the lines had one character altered or their end cut off, and its first line its beginning. */
export function damagedStream(
  format: Format,
  count: number,
  share: number,
  seed: number,
): { readonly bytes: Uint8Array; readonly lines: readonly SentLine[] } {
  const random = lcg(seed);
  for (let i = 0; i < 9; i += 1) random(); // the first numbers of neighbouring seeds are alike
  const lines = shownReadings(format, count, seed).map((s): SentLine => {
    const text = format.line(s);
    const value = Number(s.fig) + 0; // "-0" is not shown
    if (random() >= share) return { text, whole: true, cut: false, value };
    const at = Math.floor(random() * text.length);
    if (random() < 0.5) return { text: text.slice(0, at), whole: false, cut: true, value };
    const altered = text.slice(0, at) + String.fromCharCode(32 + Math.floor(random() * 95)) + text.slice(at + 1);
    return { text: altered, whole: altered === text, cut: false, value };
  });
  const begun = Math.floor(random() * 4);
  const first = lines[0]!;
  const sent = [{ ...first, text: first.text.slice(begun), whole: first.whole && begun === 0 }, ...lines.slice(1)];
  return {
    bytes: bytesOfText(sent.map((line) => line.text + format.end).join("")),
    lines: sent.filter((line) => line.text !== ""),
  };
}
