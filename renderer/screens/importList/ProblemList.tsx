import type { ImportProblem } from "../../../app/contract/importViews.ts";
import { capital } from "../../words/capital.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { fieldTexts } from "./fieldTexts.ts";
import { problemTexts } from "./problemTexts.ts";
import { importTexts } from "./texts.ts";

const SHOWN = 12;

/** What stands against an import, each with its row and column. */
export function ProblemList({
  title,
  problems,
  count,
}: {
  readonly title: string;
  readonly problems: readonly ImportProblem[];
  /** How many there are, told or not. */
  readonly count: number;
}) {
  const speech = useSpeech();
  const words = useWords(importTexts);
  const say = useProblemWords();
  if (problems.length === 0) return null;
  const shown = problems.slice(0, SHOWN);
  return (
    <section>
      <h3>{title}</h3>
      <ul>
        {shown.map((problem) => (
          <li key={`${problem.row} ${problem.column} ${problem.code} ${problem.about}`}>{say(problem)}</li>
        ))}
      </ul>
      {count > shown.length && <p className="soft">{words.more(speech.number(count - shown.length))}</p>}
    </section>
  );
}

function useProblemWords(): (problem: ImportProblem) => string {
  const speech = useSpeech();
  const words = useWords(importTexts);
  const texts = useWords(problemTexts) as Readonly<Record<string, string | ((about: string) => string)>>; // by code
  const fields = useWords(fieldTexts) as Readonly<Record<string, string>>;
  return ({ row, column, code, about, message }) => {
    const text = texts[code];
    if (text === undefined || code === "unreadable") return message;
    const said = typeof text === "string" ? text : text(fields[about] ?? about);
    if (row === undefined || row === null) return `${capital(said, speech)}.`;
    const place = speech.number(row);
    return `${column === undefined || column === null ? words.row(place) : words.cell(place, column)}: ${said}.`;
  };
}
