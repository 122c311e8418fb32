import { type ForceUnit, fromNewtons } from "../../../../app/quantity/forceUnits.ts";
import { uncertaintyDecimals } from "../../../../app/words/uncertaintyDecimals.ts";
import { unitText } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { type Plot, PlotFigure } from "../plot/PlotFigure.tsx";
import { PointTable } from "./PointTable.tsx";
import { curvePlot, errorsPlot, residualsPlot } from "./proofPlots.ts";
import { resultTexts } from "./resultTexts.ts";
import type { ShownResult } from "./ShownResult.ts";

/** The three pictures of a result: errors, what the curve leaves, the curve itself. */
export function ResultCharts({ shown, unit }: { readonly shown: ShownResult; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(resultTexts);
  const unitName = unitText(unit);
  const errors = errorsPlot(shown, unit, words, unitName);
  const residuals = residualsPlot(shown, unit, words, unitName);
  const curve = curvePlot(shown, unit, words, unitName);
  const force = (x: number) => `${speech.number(x, 3)} ${unitName}`;
  const percent = (y: number) => `${speech.number(y, 3)} %`;
  const sdN = shown.result.fit?.residualSdN ?? 0;
  const fine = Math.max(3, sdN > 0 ? uncertaintyDecimals(fromNewtons(sdN, unit)) : 3);
  const permitted = new Set(errors.band.map(({ high }) => high.toFixed(4)));
  const seriesOf = (plot: Plot, i: number) => plot.series[plot.points[i]!.series]!.word;
  const common = { fileName: shown.gaugeName, day: shown.day };
  return (
    <div className="halves">
      <PlotFigure
        {...common}
        plot={errors}
        title={words.errorsTitle}
        sentence={[
          words.errorsAbout(String(shown.result.steps.length)),
          permitted.size === 1 ? words.errorsAllowed(percent(errors.band[0]!.high)) : "",
        ]
          .join(" ")
          .trim()}
        describe={(i) => {
          const { x, y, half } = errors.points[i]!;
          return half === undefined
            ? `${force(x)}, ${seriesOf(errors, i)}: ${percent(y)}`
            : words.pointMean(force(x), percent(y), percent(half));
        }}
        table={<PointTable plot={errors} decimals={[3, 3]} />}
      />
      {residuals !== undefined && (
        <PlotFigure
          {...common}
          plot={residuals}
          title={words.residualsTitle}
          sentence={words.residualsAbout(`${speech.number(fromNewtons(sdN, unit), fine)} ${unitName}`)}
          describe={(i) => {
            const { x, y } = residuals.points[i]!;
            return `${force(x)}, ${seriesOf(residuals, i)}: ${speech.number(y, fine)} ${unitName}`;
          }}
          table={<PointTable plot={residuals} decimals={[3, fine]} />}
        />
      )}
      {curve !== undefined && (
        <PlotFigure
          {...common}
          plot={curve}
          title={words.curveTitle}
          sentence={words.curveAbout(String(shown.result.fit?.degree ?? 1))}
          describe={(i) => words.pointStep(force(curve.points[i]!.x), force(curve.points[i]!.y))}
          table={<PointTable plot={curve} decimals={[3, 3]} />}
        />
      )}
    </div>
  );
}
