import type { Proposal } from "../../../app/round/match/RoundMatch.ts";
import { Button } from "../../ui/Button.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import type { Act } from "./acts.ts";
import { questionTexts } from "./questionTexts.ts";

/** What can be said to a question, the proposal first. */
export function AnswerActs({
  proposal,
  labelOf,
  onSay,
}: {
  readonly proposal: Proposal;
  /** What the button says of an act. */
  readonly labelOf: (act: string) => string;
  readonly onSay: (said: Extract<Act, { kind: "answer" }>["said"]) => void;
}) {
  const words = useWords(questionTexts);
  const leavesOut = proposal === "leaveOut" || proposal === "measureAgain" || proposal === "countOnce";
  return (
    <span className="row">
      <Button kind="main" onClick={() => onSay("proposed")}>
        {labelOf(words[`p.${proposal}`])}
      </Button>
      {(proposal === "scale" || proposal === "swap") && (
        <Button onClick={() => onSay("asStored")}>{labelOf(words.asStored)}</Button>
      )}
      {!leavesOut && proposal !== "orderOnly" && (
        <Button kind="quiet" onClick={() => onSay("leftOut")}>
          {labelOf(words.leaveOut)}
        </Button>
      )}
    </span>
  );
}
