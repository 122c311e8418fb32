import { Button } from "../../ui/Button.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { AnswerActs } from "./AnswerActs.tsx";
import { AskedOf } from "./AskedOf.tsx";
import type { Asking } from "./QuestionList.tsx";
import { questionTexts } from "./questionTexts.ts";

/** One question: its sentence, its answers, and once answered the way back. */
export function QuestionLine({ at, view, answers, onAnswer, onTakeBack }: Asking & { readonly at: number }) {
  const words = useWords(questionTexts);
  const question = view.questions[at]!;
  const said = answers[at];
  return (
    <div className="row question">
      <AskedOf questions={[question]} view={view} />
      {said === undefined ? (
        <AnswerActs proposal={question.proposal} labelOf={(act) => act} onSay={(answer) => onAnswer([at], answer)} />
      ) : (
        <span className="row">
          <span className="soft">
            ✓{" "}
            {said === "moved"
              ? words.moved
              : said === "proposed"
                ? words[`p.${question.proposal}`]
                : said === "leftOut"
                  ? words.leaveOut
                  : words.asStored}
          </span>
          <Button kind="quiet" onClick={() => onTakeBack([at])}>
            {words.takeBack}
          </Button>
        </span>
      )}
    </div>
  );
}
