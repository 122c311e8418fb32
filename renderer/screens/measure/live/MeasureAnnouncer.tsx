import type { Draft } from "../../../../app/contract/seriesViews.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { remarkWords } from "../../../../app/words/remarkWords.ts";
import { verdictTexts } from "../../../../app/words/verdictTexts.ts";
import { useSettled } from "../../../ui/useSettled.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { measureTexts } from "../texts.ts";
import { useStateWord } from "./useStateWord.ts";

/** A state is said once it has stood so long: a force that comes to rest goes through several in a breath. */
const STANDS_MS = 800;

/**
 * What a screen reader hears while measuring: what stands against it, that the gauge holds or rests, each clamping with its
 * force, and the verdict that forms. No figure that moves.
 */
export function MeasureAnnouncer({ draft, unit }: { readonly draft: Draft; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(measureTexts);
  const verdicts = useWords(verdictTexts);
  const { word, text } = useStateWord();
  const moving = word === "rising" || word === "falling";
  const state = useSettled(text, STANDS_MS, word === "overload" ? "atOnce" : moving ? "pass" : "wait");
  const last = draft.cycles.findLast((cycle) => cycle.dropped === undefined);
  const clamping = last && words.saidClamping(last.number, speech.force(last.settledN ?? last.peakN, unit));
  const verdict = draft.forming && verdicts[draft.forming.judgement.verdict];
  const lead = { block: words.blocks, ask: words.asks, tell: words.tells };
  const warnings = draft.warnings.filter(({ overriddenWith }) => overriddenWith === undefined);
  return (
    <>
      <p className="unseen" role="status">
        {warnings.map((warning) => `${lead[warning.weight]} ${remarkWords(warning, speech, unit)}.`).join(" ")}
      </p>
      <p className="unseen" role="status">
        {state}
      </p>
      <p className="unseen" role="status">
        {clamping} {verdict}
      </p>
    </>
  );
}
