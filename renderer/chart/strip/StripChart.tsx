import { useCallback } from "react";
import { useStore } from "zustand";
import { type ForceUnit, newtonsPerUnit } from "../../../app/quantity/forceUnits.ts";
import type { GuardZone } from "../../../app/verdict/guardZones.ts";
import type { Limits } from "../../../app/verdict/Judgement.ts";
import { useCore } from "../../state/CoreContext.ts";
import { useTheme } from "../../ui/theme/useTheme.ts";
import { inBoth } from "../../words/inBoth.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { coloursOf } from "../colours.ts";
import { useCanvas } from "../useCanvas.ts";
import { type Bracket, paintStrip } from "./paintStrip.ts";
import "./strip.css";

export const stripTexts = inBoth({
  minimum: ["minimum", "Mindestkraft"],
  warning: ["warning", "Warnung"],
  maximum: ["maximum", "Höchstkraft"],
  guard: ["guard band", "Schutzband"],
  now: ["now", "jetzt"],
  seconds: ["s", "s"],
  about: [
    (clampings: string) => `Force over the last half minute. Clampings: ${clampings}.`,
    (clampings: string) => `Kraft in der letzten halben Minute. Spannvorgänge: ${clampings}.`,
  ],
});

/** The strip of the last half minute. The readings reach the canvas straight from the buffer, never through React. */
export function StripChart({
  limits,
  unit,
  capacityN,
  zones,
}: {
  readonly limits: Limits;
  readonly zones: readonly GuardZone[];
  readonly unit: ForceUnit;
  readonly capacityN: number | undefined;
}) {
  const core = useCore();
  const colours = coloursOf(useTheme());
  const speech = useSpeech();
  const words = useWords(stripTexts);
  const cycles = useStore(core.draft, (state) => state.draft?.cycles);
  const brackets: Bracket[] = (cycles ?? []).flatMap(
    ({ cycleId, number, startS, endS, windowS, settledN, peakN, dropped }) => {
      const [fromT, toT] = windowS ?? [startS, endS];
      if (fromT === undefined || toT === undefined) return [];
      const label = `${number} · ${speech.forceFigure(settledN ?? peakN, unit)}`;
      return [{ cycleId, fromT, toT, number: String(number), label, dropped: dropped !== undefined }];
    },
  );
  const greatestN = Math.max(0, ...(cycles ?? []).map((cycle) => cycle.peakN));
  const expectedN =
    limits.maximumN ?? (limits.nominalN ?? limits.warningN ?? limits.minimumN ?? (capacityN ?? 20_000) / 1.2) * 1.15;
  const topN = Math.max(expectedN * 1.06, greatestN * 1.03);
  const subscribe = useCallback((repaint: () => void) => core.strip.subscribe(repaint), [core]);
  const canvas = useCanvas(
    (context, width, height) =>
      paintStrip(context, width, height, {
        strip: core.strip,
        colours,
        limits,
        zones,
        brackets,
        unitN: newtonsPerUnit[unit],
        topN,
        number: speech.number,
        words,
      }),
    subscribe,
  );
  return (
    <div className="strip sheet">
      <canvas ref={canvas} role="img" aria-label={words.about(brackets.map((b) => b.label).join(", ") || "0")} />
    </div>
  );
}
