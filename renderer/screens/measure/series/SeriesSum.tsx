import type { Draft } from "../../../../app/contract/seriesViews.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { unitText } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { measureTexts } from "../texts.ts";

/** The figures of the series: what would be filed, and how well it is known. */
export function SeriesSum({ draft, unit }: { readonly draft: Draft; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(measureTexts);
  const { figures, forming, typed } = draft;
  const valueN = forming?.valueN ?? figures.meanN;
  if (valueN === undefined) return null;
  const corrected =
    draft.tag.gaugeId === undefined
      ? words.correctedAdapter
      : draft.tag.adapterId === undefined
        ? words.correctedGauge
        : words.corrected;
  const budget = forming?.budget;
  const factor = forming === undefined || !figures.meanN ? undefined : forming.valueN / figures.meanN;
  const share =
    figures.rangeN === undefined || figures.meanN === undefined ? undefined : figures.rangeN / figures.meanN;
  return (
    <div className="sum">
      <small>
        {[
          typed === undefined ? words.seriesOf(figures.n) : `${words.typedValue}: ${typed.text}`,
          share === undefined ? undefined : words.range(speech.percent(share, 1)),
        ]
          .filter((part) => part !== undefined)
          .join(" · ")}
      </small>
      <span className="sum-figure">
        {speech.forceFigure(valueN, unit)}
        <i>{unitText(unit)}</i>
      </span>
      {factor !== undefined && Math.abs(factor - 1) > 5e-5 && figures.meanN !== undefined && (
        <small>{corrected(speech.forceFigure(figures.meanN, unit), speech.number(factor, 4))}</small>
      )}
      {budget !== undefined && (
        <small>
          {words.uncertainty(speech.forceFigure(budget.expandedN, unit), speech.number(budget.coverageFactor, 1))}
        </small>
      )}
      {figures.scatter === "large" && <small className="loudly">{words.scatterLarge}</small>}
      {figures.firstDifference !== undefined && Math.abs(figures.firstDifference) > 0.02 && (
        <small>{words.firstOff(speech.percent(Math.abs(figures.firstDifference), 1))}</small>
      )}
    </div>
  );
}
