import { useMemo } from "react";
import { useCore } from "../../state/CoreContext.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { changeSeries, fileSeries, lastCounting, takeZero } from "./acts.ts";
import { useDropCycle } from "./series/useDropCycle.ts";
import { measureTexts } from "./texts.ts";

export type MeasureActs = {
  readonly file: () => void;
  readonly zero: () => void;
  readonly takeAgain: () => void;
  readonly dropLast: () => void;
  readonly typeIn: () => void;
  readonly startOver: () => void;
};

const SHOWN_MS = 5_000;

/** What button and key do alike. */
export function useMeasureActs(openTypeIn: () => void, askClock: (message: string) => void): MeasureActs {
  const core = useCore();
  const report = useReport();
  const words = useWords(measureTexts);
  const drop = useDropCycle();
  return useMemo(() => {
    const tell = (text: string) => core.toasts.getState().show({ text, untilMs: Date.now() + SHOWN_MS });
    return {
      file: async () => {
        const { draft } = core.draft.getState();
        if (draft?.cannotFile !== undefined) {
          tell(words[`cannot.${draft.cannotFile}`]);
          return;
        }
        const result = await fileSeries(core);
        if (result === undefined || result.ok) return;
        if (result.error.key === "clockBehind") askClock(result.error.message);
        else report(Promise.resolve(result));
      },
      zero: async () => {
        if ((await report(takeZero(core))) !== undefined) tell(words.zeroed);
      },
      takeAgain: () => report(changeSeries(core, "series.takeAgain", {})),
      dropLast: () => {
        const { draft } = core.draft.getState();
        const last = draft && lastCounting(draft);
        if (last !== undefined) drop(last, true);
      },
      typeIn: openTypeIn,
      startOver: async () => {
        if ((await report(changeSeries(core, "series.clear", {}))) !== undefined) tell(words.cleared);
      },
    };
  }, [core, report, words, drop, openTypeIn, askClock]);
}
