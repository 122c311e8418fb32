import type { Verdict } from "../../../app/verdict/Judgement.ts";
import { verdictTexts } from "../../../app/words/verdictTexts.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { VerdictMark } from "./VerdictMark.tsx";

const sizes = { small: 19, medium: 26, large: 44 } as const;

/** Mark and word; never one without the other. */
export function VerdictWord({
  verdict,
  size = "small",
}: {
  readonly verdict: Verdict;
  readonly size?: keyof typeof sizes;
}) {
  const words = useWords(verdictTexts);
  return (
    <span className={`verdict ${verdict} ${size}`}>
      <VerdictMark verdict={verdict} size={sizes[size]} />
      {words[verdict]}
    </span>
  );
}
