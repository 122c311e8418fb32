import type { CSSProperties, ReactNode } from "react";
import { useStore } from "zustand";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { Button } from "../../../ui/Button.tsx";
import { unitText } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { useReport } from "../../shell/useReport.ts";
import { takeZero } from "../acts.ts";
import { measureTexts } from "../texts.ts";
import { useStateWord } from "./useStateWord.ts";
import "./readout.css";

/** The big figure with its state in a word. It renders when a shown text changes, not for each sample. */
export function Readout({
  unit,
  resolutionN,
  capacityN,
  onWall,
  children,
}: {
  readonly unit: ForceUnit;
  readonly resolutionN: number | undefined;
  readonly capacityN: number | undefined;
  readonly onWall: () => void;
  /** Stands beside the state. */
  readonly children?: ReactNode;
}) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(measureTexts);
  const report = useReport();
  const figureOf = (forceN: number | undefined) =>
    forceN === undefined ? undefined : speech.forceFigure(forceN, unit, resolutionN);
  // A gauge that is not there shows no figure: the last one would pass for the present.
  const { heard, loud, text } = useStateWord();
  const figure = useStore(core.live, ({ live }) => (heard ? figureOf(live.forceN) : undefined)) ?? "––";
  const greatest = useStore(core.live, ({ live }) => figureOf(live.greatestN));
  const zero = useStore(core.live, ({ live }) => figureOf(live.zeroN));
  const holding = useStore(core.live, ({ live }) =>
    live.holdingS === undefined ? undefined : speech.number(Math.floor(live.holdingS)),
  );
  // Room for the widest figure this gauge can show, so that the size does not jump between 0.01 and 17.92.
  const widest = Math.max(figure.length, figureOf(capacityN)?.length ?? 5);

  return (
    <section className="readout" aria-label={words.force}>
      <div className="head">
        <p className={loud ? "state loud" : "state"}>{text}</p>
        {children}
      </div>
      <div className="figure" style={{ "--ems": widest * 0.6 + unitText(unit).length * 0.17 + 0.1 } as CSSProperties}>
        <output aria-live="off" aria-label={words.force}>
          {figure}
          <i>{unitText(unit)}</i>
        </output>
      </div>
      <div className="under">
        <span>{holding === undefined ? undefined : words.holdingFor(holding)}</span>
        <span>{zero === undefined ? words.noZero : words.zeroIs(zero)}</span>
        <span>{greatest === undefined ? undefined : words.greatest(greatest)}</span>
        <Button kind="quiet" icon="wholeScreen" keyHint="F" onClick={onWall}>
          {words.wall}
        </Button>
        <Button keyHint="Z" onClick={() => report(takeZero(core))}>
          {words.zeroAct}
        </Button>
      </div>
    </section>
  );
}
