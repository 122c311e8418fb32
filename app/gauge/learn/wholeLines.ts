import type { LinePattern } from "../linePattern.ts";
import type { SampleLine } from "./sampleLines.ts";
import { isOverloadWord, meaningOf } from "./vocabulary.ts";

type WholeLine = LinePattern["lines"][number];

/**
 * Lines that come again and again, letter for letter, and are no readings: echoed requests, bare status words. What is
 * the beginning or the end of a good line may be one that was cut, and is left out unless it makes up much of the stream.
 */
export function wholeLines(residual: readonly SampleLine[], good: readonly string[], total: number): WholeLine[] {
  const counts = new Map<string, number>();
  for (const { text } of residual) counts.set(text.trim(), (counts.get(text.trim()) ?? 0) + 1);
  const found: WholeLine[] = [];
  for (const [text, n] of counts) {
    if (text === "" || text.length > 60 || found.length >= 12) continue;
    const means = meaningOfLine(text);
    const often = n >= 0.2 * total && n >= 2;
    const piece = good.some(
      (line) => line.startsWith(text) || line.trim().startsWith(text) || line.trim().endsWith(text),
    );
    const enough = means === undefined ? n >= 3 && /[A-Za-z?!]/.test(text) && n >= 0.002 * total : n >= 1;
    if (!often && (piece || !enough)) continue;
    found.push({ text, means: means ?? (often ? "echo" : "status") });
  }
  return found;
}

function meaningOfLine(text: string): WholeLine["means"] | undefined {
  if (/\d/.test(text)) return undefined;
  const words = text.split(/[\s,;:]+/).map((word) => word.replace(/^[+-](?=[A-Za-z])/, ""));
  if (words.some((word) => word.length > 1 && isOverloadWord(word))) return "overload";
  const joined = meaningOf(words.join(""));
  const means =
    joined ??
    words.map((word) => (word.length > 1 ? meaningOf(word) : undefined)).find((m) => m !== undefined && m !== "other");
  return means === "underload" || means === "lowBattery" ? means : undefined;
}
