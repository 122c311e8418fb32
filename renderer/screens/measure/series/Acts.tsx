import { useRef } from "react";
import { useStore } from "zustand";
import type { Draft } from "../../../../app/contract/seriesViews.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { Button } from "../../../ui/Button.tsx";
import { useHeightAs } from "../../../ui/useHeightAs.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { lastCounting } from "../acts.ts";
import { measureTexts } from "../texts.ts";
import type { MeasureActs } from "../useMeasureActs.ts";

/** The acts: the big one says what it will file where; beside it, what mends the series. */
export function Acts({
  draft,
  unit,
  spindleName,
  acts,
}: {
  readonly draft: Draft;
  readonly unit: ForceUnit;
  readonly spindleName: string | undefined;
  readonly acts: MeasureActs;
}) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(measureTexts);
  const bar = useRef<HTMLDivElement>(null);
  useHeightAs("--only-acts-height", bar); // where there is no room for more, only they stay in sight
  const filing = useStore(core.draft, (state) => state.filing);
  const valueN = draft.forming?.valueN ?? draft.figures.meanN;
  const last = lastCounting(draft);
  const ready = draft.cannotFile === undefined && valueN !== undefined && spindleName !== undefined;
  return (
    <div className="series-acts" ref={bar}>
      <Button kind="main" keyHint={words.spaceKey} disabled={!ready} busy={filing} onClick={acts.file}>
        {filing ? words.filing : ready ? words.file(speech.force(valueN, unit), spindleName) : words.fileNothing}
      </Button>
      {draft.cannotFile !== undefined && draft.cannotFile !== "nothingMeasured" && (
        <p className="small">{words[`cannot.${draft.cannotFile}`]}</p>
      )}
      {last !== undefined && (
        <Button keyHint="R" onClick={acts.takeAgain}>
          {words.takeAgain(last.number)}
        </Button>
      )}
      {last === undefined && (
        <Button keyHint="T" onClick={acts.typeIn}>
          {words.typeIn}
        </Button>
      )}
      {(draft.cycles.length > 0 || draft.typed !== undefined) && (
        <Button kind="quiet" onClick={acts.startOver}>
          {words.clearAll}
        </Button>
      )}
    </div>
  );
}
