import type { GaugeRow } from "../../../app/contract/recordViews.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { gaugesTexts } from "./texts.ts";

/** Whether a proof still holds: a word, and a shape beside it. */
export function ProofState({ state }: { readonly state: GaugeRow["proofState"] }) {
  const words = useWords(gaugesTexts);
  const word = { none: words.none, current: words.current, pastDue: words.pastDueShort, off: words.offShort }[state];
  return (
    <span className={`proof ${state}`}>
      <i aria-hidden="true" />
      {word}
    </span>
  );
}
