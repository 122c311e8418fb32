import type { ProofDrift } from "../../../../app/proof/after/driftOfProofs.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { localToday } from "../../spindle/localToday.ts";
import { PlotFigure } from "../plot/PlotFigure.tsx";
import { PointTable } from "../result/PointTable.tsx";
import { afterTexts } from "./afterTexts.ts";
import { driftPlot } from "./driftPlot.ts";

/** What the gauge did between its proofs, adjustments left out. */
export function DriftFigure({
  drift,
  gaugeName,
  unit,
}: {
  readonly drift: ProofDrift;
  readonly gaugeName: string;
  readonly unit: ForceUnit;
}) {
  const speech = useSpeech();
  const words = useWords(afterTexts);
  const plot = driftPlot(drift, words, speech.plainDate);
  return (
    <PlotFigure
      plot={plot}
      title={words.drift}
      sentence={words.driftAbout(String(drift.steps.length + 1))}
      fileName={gaugeName}
      day={localToday()}
      describe={(i) => {
        const { from, to, worst } = drift.steps[i]!;
        return words.driftPoint(
          speech.plainDate(from),
          speech.plainDate(to),
          speech.percent(worst.relative, 3),
          speech.percent(worst.expanded, 3),
          speech.force(worst.atN, unit),
        );
      }}
      table={<PointTable plot={plot} decimals={[0, 3]} />}
    />
  );
}
