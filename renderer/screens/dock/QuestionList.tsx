import type { DockingView } from "../../../app/contract/roundViews.ts";
import type { Question } from "../../../app/round/match/RoundMatch.ts";
import { Button } from "../../ui/Button.tsx";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import type { Answer, Placed } from "./Placed.ts";
import { dockTexts } from "./texts.ts";

/** Each slip as a question with the answer the program would give. */
export function QuestionList({
  view,
  placed,
  onAnswer,
}: {
  readonly view: DockingView;
  readonly placed: Placed;
  readonly onAnswer: (at: number, said: Answer) => void;
}) {
  const words = useWords(dockTexts);
  const open = view.questions.filter((_, i) => placed.answers[i] === undefined).length;
  if (view.questions.length === 0) return null;
  return (
    <section className="sheet form" aria-labelledby="questions-title">
      <h2 id="questions-title">{words.questions(open)}</h2>
      <ol className="questions">
        {view.questions.map((question, i) => (
          // The list of a docking never changes; its positions are what answers name.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          <li key={i} className="row">
            <Sentence question={question} view={view} />
            {placed.answers[i] === undefined ? (
              <Acts question={question} onSay={(said) => onAnswer(i, said)} />
            ) : (
              <span className="soft">✓ {words.answered}</span>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}

function Sentence({ question, view }: { readonly question: Question; readonly view: DockingView }) {
  const speech = useSpeech();
  const words = useWords(dockTexts);
  const { code, takes, stops, factor } = question;
  const numbers = speech.list(takes.slice(0, 12).map((t) => view.takes[t]?.number ?? String(t + 1)));
  const names = stops.map((s) => view.stops[s]?.name ?? "").filter((n) => n !== "");
  const what =
    code === "unitFactor"
      ? words["q.unitFactor"](speech.number(factor ?? 1, (factor ?? 1) < 1 ? 5 : 3))
      : words[`q.${code}`];
  return (
    <span className="sentence">
      {words.readings(takes.length > 12 ? `${numbers} …` : numbers)}{" "}
      {names.length > 0 && <b>({speech.list(names)}) </b>}
      {what}
    </span>
  );
}

function Acts({ question, onSay }: { readonly question: Question; readonly onSay: (said: Answer) => void }) {
  const words = useWords(dockTexts);
  const leavesOut =
    question.proposal === "leaveOut" || question.proposal === "measureAgain" || question.proposal === "countOnce";
  return (
    <span className="row">
      <Button kind="main" onClick={() => onSay("proposed")}>
        {words[`p.${question.proposal}`]}
      </Button>
      {(question.proposal === "scale" || question.proposal === "swap") && (
        <Button onClick={() => onSay("asStored")}>{words.asStored}</Button>
      )}
      {!leavesOut && question.proposal !== "orderOnly" && (
        <Button kind="quiet" onClick={() => onSay("leftOut")}>
          {words.leaveOut}
        </Button>
      )}
    </span>
  );
}
