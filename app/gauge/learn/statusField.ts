import type { OpenQuestion } from "../learnPattern.ts";
import type { PatternField, WordMeaning } from "../linePattern.ts";
import type { Column } from "./columns.ts";
import { established } from "./established.ts";
import { letterMeanings, meaningOf, relativesOf } from "./vocabulary.ts";

export type LearnedStatus = { readonly field: PatternField; readonly question?: OpenQuestion };

/**
 * A column of words: fixed text, or status words with their meanings. Words that never change and mean nothing known
 * are text; several that mean nothing known are kept and asked about.
 */
export function statusField(column: Column): LearnedStatus {
  const words = wordsOf(column);
  if (words.every((word) => word.length === 1)) return letters(words);
  const known = words.filter((word) => meaningOf(word) !== undefined);
  if (
    words.length === 1 &&
    (known.length === 0 || relativesOf(words[0]!).length === 0) &&
    (meaningOf(words[0]!) ?? "other") === "other"
  ) {
    return { field: { field: "text", text: words[0]! } };
  }
  const meanings: Record<string, WordMeaning> = {};
  for (const word of words) for (const [relative, means] of relativesOf(word)) meanings[relative] = means;
  for (const word of words) meanings[word] = meaningOf(word) ?? "other";
  const field: PatternField = { field: "status", words: meanings, optional: false };
  const open = words.filter((word) => meaningOf(word) === undefined);
  return open.length > 0 && words.length > 1 ? { field, question: ask(open) } : { field };
}

/** Words that are no accident of a damaged line; a known one is no accident even once. */
function wordsOf(column: Column): string[] {
  const texts = column.tokens.map((token) => token.text);
  const kept = new Set(established(texts).keys());
  const sure = [...kept];
  for (const text of texts) if (isKnown(text) && sure.every((word) => fitsBeside(text, word))) kept.add(text);
  return kept.size > 0 ? [...kept] : [texts[0]!];
}

const isKnown = (text: string) => text.length > 1 && meaningOf(text) !== undefined;

/** Written in the same case, and no piece of the other: "ST" may be what is left of "STABLE". */
const fitsBeside = (text: string, word: string) =>
  (text === text.toUpperCase()) === (word === word.toUpperCase()) &&
  (text === text.toLowerCase()) === (word === word.toLowerCase()) &&
  !word.startsWith(text) &&
  !word.endsWith(text);

function letters(words: readonly string[]): LearnedStatus {
  const meanings = letterMeanings(words);
  if (words.length === 1) {
    const only = words[0]!;
    if (meanings !== undefined && meanings[only] !== "other")
      return { field: { field: "status", words: meanings, optional: false } };
    const field: PatternField = { field: "text", text: only };
    // P, M and H may stand for a held maximum on every line; other single letters are names.
    return /^[PMH]$/i.test(only) ? { field, question: ask([only]) } : { field };
  }
  if (meanings !== undefined) return { field: { field: "status", words: meanings, optional: false } };
  const open = Object.fromEntries(words.map((word): [string, WordMeaning] => [word, "other"]));
  return { field: { field: "status", words: open, optional: false }, question: ask(words) };
}

function ask(words: readonly string[]): OpenQuestion {
  const list = words.map((word) => `"${word}"`).join(", ");
  const question =
    words.length === 1
      ? `The lines carry ${list}: does it mark a held maximum, a moving load, an overload, or nothing of these?`
      : `The lines carry ${list}: which of them mark a moving load, an overload or a held maximum?`;
  return { field: "status", question, proposal: "nothing of these" };
}
