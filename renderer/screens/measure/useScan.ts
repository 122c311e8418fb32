import { useCallback } from "react";
import { useCore } from "../../state/CoreContext.ts";
import { useList } from "../../state/useList.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { matchLabel } from "../scan/matchLabel.ts";
import { useReport } from "../shell/useReport.ts";
import { changeSeries } from "./acts.ts";
import type { Place } from "./round/useGoTo.ts";
import { measureTexts } from "./texts.ts";

const SHOWN_MS = 4_000;

/** What a scanned label does on Measure: it tags the series with the spindle, adapter or gauge of that name. */
export function useScan(goTo: (place: Place) => Promise<boolean>): (label: string) => void {
  const core = useCore();
  const report = useReport();
  const words = useWords(measureTexts);
  const spindles = useList("spindles").rows;
  const adapters = useList("adapters").rows;
  const gauges = useList("gauges").rows;
  return useCallback(
    async (label) => {
      const found = matchLabel(label, spindles ?? [], adapters ?? [], gauges ?? []);
      const tell = (text: string) => core.toasts.getState().show({ text, untilMs: Date.now() + SHOWN_MS });
      if (found === undefined) {
        tell(words.scanUnknown(label));
        return;
      }
      const tagged =
        found.part === "spindle"
          ? await goTo({ spindleId: found.id, name: found.name })
          : (await report(changeSeries(core, "series.tag", { [`${found.part}Id`]: found.id }))) !== undefined;
      if (tagged) tell(words.scanned(found.name));
    },
    [core, goTo, report, words, spindles, adapters, gauges],
  );
}
