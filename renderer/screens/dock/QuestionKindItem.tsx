import { useState } from "react";
import { Button } from "../../ui/Button.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { AnswerActs } from "./AnswerActs.tsx";
import { AskedOf } from "./AskedOf.tsx";
import type { QuestionKind } from "./acts.ts";
import { QuestionLine } from "./QuestionLine.tsx";
import type { Asking } from "./QuestionList.tsx";
import { questionTexts } from "./questionTexts.ts";
import { useMore } from "./useMore.tsx";

/** Questions alike: one act answers all that are open, one takes all answers back; each can be looked at by itself. */
export function QuestionKindItem({ kind, ...asking }: Asking & { readonly kind: QuestionKind }) {
  const { view, answers, onAnswer, onTakeBack } = asking;
  const words = useWords(questionTexts);
  const [opened, setOpened] = useState(false);
  const { shown, button } = useMore(kind.at);
  const open = kind.at.filter((i) => answers[i] === undefined);
  const done = kind.at.length - open.length;
  const label = done === 0 ? words.all : words.rest;
  return (
    <>
      <div className="row question">
        <AskedOf questions={kind.at.map((i) => view.questions[i]!)} view={view} />
        {open.length > 0 && (
          <AnswerActs
            proposal={kind.like.proposal}
            labelOf={(act) => label(act, open.length)}
            onSay={(said) => onAnswer(open, said)}
          />
        )}
        {done > 0 && (
          <span className="row">
            <span className="soft">✓ {words.answered(done, kind.at.length)}</span>
            <Button kind="quiet" onClick={() => onTakeBack(kind.at)}>
              {words.takeBackAll(done)}
            </Button>
          </span>
        )}
      </div>
      <details className="one-by-one" onToggle={(event) => setOpened(event.currentTarget.open)}>
        <summary>{words.oneByOne(kind.at.length)}</summary>
        {opened && (
          <ol className="questions">
            {shown.map((i) => (
              <li key={i}>
                <QuestionLine at={i} {...asking} />
              </li>
            ))}
          </ol>
        )}
        {opened && button}
      </details>
    </>
  );
}
