import { useMemo, useState } from "react";
import type { Draft } from "../../../../app/contract/seriesViews.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { useWords } from "../../../words/SpeechContext.tsx";
import { useReport } from "../../shell/useReport.ts";
import { roundLeadTexts } from "./texts.ts";

export type RoundAsk = "later" | "leftOut" | "stops";

export type RoundActs = {
  /** What is asked over the page just now. */
  readonly asked: RoundAsk | undefined;
  readonly ask: (what: RoundAsk | undefined) => void;
  readonly pass: (as: "later" | "leftOut", why: string) => void;
  readonly putAway: () => void;
};

const SHOWN_MS = 5_000;

/** What buttons and keys of a round in hand do alike. */
export function useRoundActs(): RoundActs {
  const core = useCore();
  const report = useReport();
  const words = useWords(roundLeadTexts);
  const [asked, ask] = useState<RoundAsk>();
  const acts = useMemo(() => {
    const show = (draft: Draft | undefined) => {
      if (draft !== undefined) core.draft.setState({ draft });
      return draft !== undefined;
    };
    let underWay = false;
    return {
      /** What was asked stays open, its reason with it, until the core has taken it. */
      pass: async (as: "later" | "leftOut", why: string) => {
        const { roundId, tag } = core.draft.getState().draft ?? {};
        if (roundId == null || tag?.spindleId == null) return ask(undefined);
        if (underWay) return;
        underWay = true;
        const answer = await report(core.client.call("rounds.pass", { roundId, spindleId: tag.spindleId, as, why }));
        underWay = false;
        if (show(answer)) ask(undefined);
      },
      putAway: async () => {
        if (show(await report(core.client.call("rounds.lead", { roundId: null }))))
          core.toasts.getState().show({ text: words.awayToast, untilMs: Date.now() + SHOWN_MS });
      },
    };
  }, [core, report, words]);
  return { asked, ask, ...acts };
}
