import type { DockingView } from "../../../app/contract/roundViews.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { type Act, kindsOf } from "./acts.ts";
import type { Placed } from "./Placed.ts";
import { QuestionKindItem } from "./QuestionKindItem.tsx";
import { QuestionLine } from "./QuestionLine.tsx";
import { questionTexts } from "./questionTexts.ts";

export type Asking = {
  readonly view: DockingView;
  readonly answers: Placed["answers"];
  readonly onAnswer: (at: readonly number[], said: Extract<Act, { kind: "answer" }>["said"]) => void;
  readonly onTakeBack: (at: readonly number[]) => void;
};

/** Each slip as a question with the answer the program would give; those alike are answered by one act. */
export function QuestionList(asking: Asking) {
  const { view, answers } = asking;
  const words = useWords(questionTexts);
  const open = view.questions.filter((_, i) => answers[i] === undefined).length;
  if (view.questions.length === 0) return null;
  return (
    <section className="sheet form" aria-labelledby="questions-title">
      <h2 id="questions-title">{words.questions(open)}</h2>
      <ol className="questions">
        {kindsOf(view.questions).map((kind) => (
          <li key={kind.at[0]}>
            {kind.at.length === 1 ? (
              <QuestionLine at={kind.at[0]!} {...asking} />
            ) : (
              <QuestionKindItem kind={kind} {...asking} />
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}
