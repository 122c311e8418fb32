import { useStore } from "zustand";
import type { Draft } from "../../../../app/contract/seriesViews.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { Caution } from "../../../ui/feedback/Caution.tsx";
import { useWords } from "../../../words/SpeechContext.tsx";
import { measureTexts } from "../texts.ts";

/** Before the first clamping: the one next step, and the cautions, where the hand is about to act. */
export function NextStep({ draft, capacity }: { readonly draft: Draft; readonly capacity: string | undefined }) {
  const core = useCore();
  const words = useWords(measureTexts);
  const zeroed = useStore(core.live, ({ live }) => live.zeroN !== undefined);
  const connected = useStore(core.link, ({ link }) => link !== undefined && link.state !== "closed");
  const step = !connected
    ? words.nextGauge
    : draft.tag.spindleId === undefined
      ? words.nextSpindle
      : draft.tag.gaugeId === undefined
        ? words.nextWhichGauge
        : zeroed
          ? words.nextClamp
          : words.nextZero;
  return (
    <div className="forming">
      <p className="step">{step}</p>
      <Caution title={words.beforeClamp}>
        {[
          words.cautionLock,
          words.cautionHands,
          words.cautionTurn,
          capacity === undefined ? undefined : words.cautionCapacity(capacity),
          words.cautionRules,
        ]
          .filter((part) => part !== undefined)
          .join(" ")}
      </Caution>
    </div>
  );
}
