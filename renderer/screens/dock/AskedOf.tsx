import type { DockingView } from "../../../app/contract/roundViews.ts";
import type { Question } from "../../../app/round/match/RoundMatch.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { questionTexts } from "./questionTexts.ts";

/** More numbers or names than this are never looked through in one sentence. */
const MOST_SHOWN = 12;

/** What is asked, and of which readings and spindles. Questions that stand together ask the same. */
export function AskedOf({ questions, view }: { readonly questions: readonly Question[]; readonly view: DockingView }) {
  const speech = useSpeech();
  const words = useWords(questionTexts);
  const { code, factor } = questions[0]!;
  const numberOf = (take: number) => view.takes[take]?.number ?? String(take + 1);
  const takes = new Set(questions.flatMap((q) => q.takes));
  // Readings of one question belong together: two that were swapped, or one that was stored twice.
  const together = questions.length > 1 && questions.some((q) => q.takes.length > 1);
  const parts = together
    ? questions.map((q) => some(q.takes.map(numberOf), speech.list, words.andMore))
    : [...takes].map(numberOf);
  const list = some(parts, together ? (texts) => texts.join("; ") : speech.list, words.andMore);
  const names = [...new Set(questions.flatMap((q) => q.stops))].flatMap((s) => view.stops[s]?.name ?? []);
  const one = takes.size === 1;
  const by = speech.number(factor ?? 1, (factor ?? 1) < 1 ? 5 : 3);
  const sentence = one && code !== "valueTwice" && code !== "swapped" ? words[`one.${code}`] : words[`q.${code}`];
  const what = typeof sentence === "string" ? sentence : sentence(by);
  return (
    <span className="sentence">
      {one ? words.reading(list) : words.readings(list)}{" "}
      {names.length > 0 && <b>({some(names, speech.list, words.andMore)}) </b>}
      {what}
    </span>
  );
}

const some = (texts: readonly string[], listed: (texts: string[]) => string, andMore: (n: number) => string) =>
  texts.length <= MOST_SHOWN
    ? listed([...texts])
    : `${texts.slice(0, MOST_SHOWN).join(", ")} ${andMore(texts.length - MOST_SHOWN)}`;
