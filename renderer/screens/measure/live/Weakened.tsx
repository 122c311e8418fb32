import type { Draft } from "../../../../app/contract/seriesViews.ts";
import type { Remark } from "../../../../app/ledger/check.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { remarkWords } from "../../../../app/words/remarkWords.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { measureTexts } from "../texts.ts";

/** So many are said beside the verdict; the hand needs the room for the figure and the chart. */
const AT_ONCE = 2;

/** What weakens the verdict, less what stands above it as a warning; the rest is counted, and said where the budget is. */
export function Weakened({
  by,
  warnings,
  unit,
}: {
  readonly by: readonly Remark[];
  readonly warnings: Draft["warnings"];
  readonly unit: ForceUnit;
}) {
  const speech = useSpeech();
  const words = useWords(measureTexts);
  const left = by.filter(({ code }) => !warnings.some((warning) => warning.code === code));
  if (left.length === 0) return null;
  const said = left.slice(0, left.length > AT_ONCE + 1 ? AT_ONCE : AT_ONCE + 1); // never "and 1 more"
  const more = left.length - said.length;
  const list = said.map((remark) => remarkWords(remark, speech, unit));
  return (
    <p className="small">
      <b>{words.weakened}</b> {speech.list(more > 0 ? [...list, words.weakenedMore(more)] : list)}
    </p>
  );
}
