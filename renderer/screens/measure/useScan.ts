import { useCallback } from "react";
import { useCore } from "../../state/CoreContext.ts";
import { useList } from "../../state/useList.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { changeSeries } from "./acts.ts";
import { matchLabel } from "./matchLabel.ts";
import { measureTexts } from "./texts.ts";

const SHOWN_MS = 4_000;

/** What a scanned label does on Measure: it tags the series with the spindle or adapter of that name. */
export function useScan(): (label: string) => void {
  const core = useCore();
  const report = useReport();
  const words = useWords(measureTexts);
  const spindles = useList("spindles").rows;
  const adapters = useList("adapters").rows;
  return useCallback(
    async (label) => {
      const found = matchLabel(label, spindles ?? [], adapters ?? []);
      const tell = (text: string) => core.toasts.getState().show({ text, untilMs: Date.now() + SHOWN_MS });
      if (found === undefined) {
        tell(words.scanUnknown(label));
        return;
      }
      if ((await report(changeSeries(core, "series.tag", { [`${found.part}Id`]: found.id }))) !== undefined) {
        tell(words.scanned(found.name));
      }
    },
    [core, report, words, spindles, adapters],
  );
}
