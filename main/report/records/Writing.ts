import { type ForceUnit, forceUnits } from "../../../app/quantity/forceUnits.ts";
import type { Verdict } from "../../../app/verdict/Judgement.ts";
import type { Language } from "../../../app/words/Language.ts";
import { oddsText } from "../../../app/words/reasonSentence.ts";
import { createSpeech, type Speech } from "../../../app/words/Speech.ts";
import { verdictTexts } from "../../../app/words/verdictTexts.ts";

type Maybe = number | null | undefined;

/** How a report writes figures, dates and answers in its language; what does not exist is a dash. */
export type Writing = {
  readonly language: Language;
  /** Dates of it are those of UTC. */
  readonly speech: Speech;
  readonly force: (valueN: Maybe, unit: ForceUnit, stepN?: number) => string;
  readonly figure: (valueN: Maybe, unit: ForceUnit, stepN?: number) => string;
  readonly percent: (share: Maybe, digits?: number) => string;
  /** A probability: never 100 %, which no measurement gives. */
  readonly odds: (probability: Maybe) => string;
  readonly number: (value: Maybe, decimals?: number) => string;
  /** So many significant digits, as a plain number. */
  readonly digits: (value: Maybe, count?: number) => string;
  readonly day: (ms: number) => string;
  /** A plain "2026-11-12". */
  readonly plainDay: (date: string) => string;
  /** Date and time as the clock on the wall stood, with what it was off from UTC. */
  readonly wallTime: (atMs: number, offsetMinutes: number) => string;
  /** In capitals: an answer must be found at a glance. */
  readonly verdict: (verdict: Verdict | undefined) => string;
};

const NONE = "–";
const locales: Readonly<Record<Language, string>> = { en: "en-GB", de: "de-DE" };

export function writingOf(language: Language): Writing {
  const speech = createSpeech(language, locales[language], "UTC");
  const or = (value: Maybe, write: (value: number) => string) =>
    value === null || value === undefined ? NONE : write(value);
  return {
    language,
    speech,
    force: (valueN, unit, stepN) => or(valueN, (v) => speech.force(v, unit, stepN)),
    figure: (valueN, unit, stepN) => or(valueN, (v) => speech.forceFigure(v, unit, stepN)),
    percent: (share, digits = 1) => or(share, (v) => speech.percent(v, digits)),
    odds: (probability) => or(probability, (p) => oddsText(p, speech)),
    number: (value, decimals) => or(value, (v) => speech.number(v, decimals)),
    digits: (value, count = 6) => or(value, (v) => marked(String(Number(v.toPrecision(count))), language)),
    day: speech.date,
    plainDay: speech.plainDate,
    wallTime: (atMs, offset) => `${speech.dateTime(atMs + offset * 60_000)} (UTC${offsetText(offset)})`,
    verdict: (verdict) =>
      verdict === undefined ? verdictTexts[language].never : verdictTexts[language][verdict].toUpperCase(),
  };
}

const marked = (text: string, language: Language) =>
  (language === "de" ? text.replace(".", ",") : text).replaceAll("-", "\u2212");

function offsetText(minutes: number): string {
  const two = (n: number) => String(n).padStart(2, "0");
  const size = Math.abs(minutes);
  return `${minutes < 0 ? "\u2212" : "+"}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}

/** The first of these that is a unit this program knows; newtons otherwise. */
export function unitOf(...named: readonly (string | undefined)[]): ForceUnit {
  return named.find((name): name is ForceUnit => forceUnits.includes(name as ForceUnit)) ?? "N"; // asked for just here
}
