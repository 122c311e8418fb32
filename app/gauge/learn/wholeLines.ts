import { parseForceUnit } from "../../quantity/parseForceUnit.ts";
import type { LinePattern } from "../linePattern.ts";
import type { SampleLine } from "./sampleLines.ts";
import { isOverloadWord, meaningOf } from "./vocabulary.ts";

type WholeLine = LinePattern["lines"][number];

/**
 * Lines that come again and again, letter for letter, and are no readings: echoed requests, bare status words. What is
 * the beginning or the end of a good line may be one that was cut, and is left out unless it makes up much of the stream.
 */
export function wholeLines(residual: readonly SampleLine[], good: ReadonlySet<string>, total: number): WholeLine[] {
  const counts = new Map<string, number>();
  for (const { text } of residual) counts.set(text.trim(), (counts.get(text.trim()) ?? 0) + 1);
  const found: WholeLine[] = [];
  for (const [text, n] of [...counts].sort((a, b) => b[1] - a[1])) {
    if (n < 2 && total > 50) break;
    if (text === "" || text.length > 60 || found.length >= 12) continue;
    const means = meaningOfLine(text);
    const often = n >= 0.2 * total && n >= 2;
    const says = means !== undefined || (n >= 3 && n >= 0.002 * total && /[A-Za-z?!]/.test(text) && !/\d/.test(text));
    if (often || (says && !isPiece(text, good))) found.push({ text, means: means ?? (often ? "echo" : "status") });
  }
  return found;
}

function isPiece(text: string, good: ReadonlySet<string>): boolean {
  for (const line of good) if (line.startsWith(text) || line.endsWith(text)) return true;
  return false;
}

/** What a line says that has no other words than known ones; a unit may stand beside them. */
function meaningOfLine(text: string): WholeLine["means"] | undefined {
  const words = text.split(/[\s,;:]+/).map((word) => word.replace(/^[+-](?=[A-Za-z])/, ""));
  const joined = meaningOf(words.join(""));
  const said = words.filter((word) => parseForceUnit(word).kind === "unknown");
  if (
    joined === undefined &&
    !said.every((word) => word.length > 1 && (isOverloadWord(word) || meaningOf(word) !== undefined))
  )
    return undefined;
  if (said.some(isOverloadWord)) return "overload";
  const means = joined ?? said.map(meaningOf).find((m) => m !== undefined && m !== "other");
  return means === "underload" || means === "lowBattery" ? means : undefined;
}
