import { useState } from "react";
import type { Draft, Warning } from "../../../app/contract/seriesViews.ts";
import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import { remarkWords } from "../../../app/words/remarkWords.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { ReasonDialog } from "../../ui/ReasonDialog.tsx";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { changeSeries } from "./acts.ts";
import { measureTexts } from "./texts.ts";

/** What stands against measuring like this. Where a reason is enough, it is asked for; what endangers someone has no way past. */
export function Warnings({ draft, unit }: { readonly draft: Draft; readonly unit: ForceUnit }) {
  const core = useCore();
  const report = useReport();
  const speech = useSpeech();
  const words = useWords(measureTexts);
  const [asked, setAsked] = useState<Warning>();
  if (draft.warnings.length === 0 && !draft.recovered) return null;
  const lead = { block: words.blocks, ask: words.asks, tell: words.tells };
  return (
    <ul className="warnings">
      {draft.recovered && <li className="tell">{words.recovered}</li>}
      {draft.warnings.map((warning) => (
        <li key={warning.code + (warning.about ?? "")} className={warning.weight}>
          <span>
            <b>{lead[warning.weight]}</b> {remarkWords(warning, speech, unit)}
            {warning.overriddenWith !== undefined && <small> {words.goneOn(warning.overriddenWith)}</small>}
          </span>
          {warning.weight === "ask" && warning.overriddenWith === undefined && (
            <Button onClick={() => setAsked(warning)}>{words.goOn}</Button>
          )}
        </li>
      ))}
      {asked !== undefined && (
        <ReasonDialog
          title={words.goOnTitle}
          act={words.goOn}
          onClose={() => setAsked(undefined)}
          onReason={async (reason) => {
            await report(changeSeries(core, "series.override", { code: asked.code, reason }));
            setAsked(undefined);
          }}
        >
          {remarkWords(asked, speech, unit)}
        </ReasonDialog>
      )}
    </ul>
  );
}
