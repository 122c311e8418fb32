import { useCallback } from "react";
import type { CycleView } from "../../../../app/contract/seriesViews.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { commonTexts } from "../../../words/commonTexts.ts";
import { useWords } from "../../../words/SpeechContext.tsx";
import { useReport } from "../../shell/useReport.ts";
import { changeSeries } from "../acts.ts";
import { measureTexts } from "../texts.ts";

const UNDO_MS = 8_000;

/** Leaves a clamping out, with the act that takes it in again in sight; or takes it in. */
export function useDropCycle(): (cycle: Pick<CycleView, "cycleId" | "number">, leaveOut: boolean) => Promise<void> {
  const core = useCore();
  const report = useReport();
  const words = useWords(measureTexts);
  const common = useWords(commonTexts);
  return useCallback(
    async ({ cycleId, number }, leaveOut) => {
      const set = (dropped: { reason: string } | null) =>
        report(changeSeries(core, "series.drop", { cycleId, dropped }));
      const done = await set(leaveOut ? { reason: "" } : null);
      if (done === undefined || !leaveOut) return;
      core.toasts.getState().show({
        text: words.leftOutToast(number),
        untilMs: Date.now() + UNDO_MS,
        act: { label: common.undo, run: () => set(null) },
      });
    },
    [core, report, words, common],
  );
}
