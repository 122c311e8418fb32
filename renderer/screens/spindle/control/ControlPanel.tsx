import { useMemo, useState } from "react";
import type { SpindlePage } from "../../../../app/contract/recordViews.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import type { ChartSignal } from "../../../../app/trend/control/levelCharts.ts";
import { go, hrefOf } from "../../../state/routeStore.ts";
import { Choices } from "../../../ui/field/Choices.tsx";
import { unitText } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { ChartPlots } from "./ChartPlots.tsx";
import { type ChartKind, chartsOf, falseAlarms, firstRules, type OwnPoint, ownPoints, signalsOf } from "./chartOf.ts";
import { controlTexts } from "./controlTexts.ts";
import { RulePicker } from "./RulePicker.tsx";
import "./control.css";

const kinds: readonly ChartKind[] = ["calm", "individuals", "ewma", "cusum"];
const BASELINE = 8;

/** Has the level changed since the last service? The classical charts, the calmest first, with how often each errs. */
export function ControlPanel({ page, unit }: { readonly page: SpindlePage; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(controlTexts);
  const [kind, setKind] = useState<ChartKind>("calm");
  const [chosen, setChosen] = useState(firstRules);
  const points = useMemo(() => ownPoints(page), [page]);
  const charts = useMemo(() => chartsOf(points, kind, chosen), [points, kind, chosen]);
  const alarms = useMemo(() => falseAlarms(kind, chosen), [kind, chosen]);
  const why = useWhy();
  const open = (at: number) => {
    const checkId = points[at]?.checkId;
    if (checkId !== undefined) go({ place: "spindle", spindleId: page.row.spindle.spindleId, checkId });
  };
  if (page.trend.points.length === 0) return null;
  const title = <h2 id="control-title">{words.title}</h2>;
  if (charts === undefined) {
    const counting = points.filter(({ stray }) => !stray).length;
    return (
      <section className="sheet control" aria-labelledby="control-title">
        {title}
        <p>{counting > BASELINE ? words.noScatter : words.tooFew(points.length)}</p>
      </section>
    );
  }
  const signals = signalsOf(charts, kind);
  const idle = kind === "individuals" && chosen.rules.length === 0 && !chosen.ranges;
  return (
    <section className="sheet control" aria-labelledby="control-title">
      {title}
      <p className="why" role="status">
        {idle ? words.noRule : <SignalSentence signals={signals} points={points} unit={unit} />}
      </p>
      <Choices
        label={words.chart}
        hideLabel
        value={kind}
        options={kinds.map((value) => ({ value, label: words[value] }))}
        onChoose={setKind}
      />
      <ChartPlots charts={charts} points={points} kind={kind} unit={unit} why={why} open={open} />
      <p className="small soft">
        {words.plotNote}{" "}
        {alarms === undefined
          ? words.runLengthUnknown
          : `${words.runLength(rounded(alarms.runLength))} ${words.withEight(speech.percent(alarms.withinForty))}`}
      </p>
      {kind === "individuals" && <RulePicker chosen={chosen} onChoose={setChosen} />}
      <Figures page={page} points={points} signals={signals} unit={unit} />
    </section>
  );

  /** Three figures: the run length of an idea, not of this spindle. */
  function rounded(length: number): string {
    return length > 1e6 ? words.overMillion : speech.number(Number(length.toPrecision(3)));
  }
}

function useWhy() {
  const words = useWords(controlTexts);
  return ({ code, side }: ChartSignal) =>
    code === "fourteenAlternating" || code === "fifteenWithinOne" ? words[code] : `${words[code]}, ${words[side]}`;
}

function SignalSentence({
  signals,
  points,
  unit,
}: {
  readonly signals: readonly ChartSignal[];
  readonly points: readonly OwnPoint[];
  readonly unit: ForceUnit;
}) {
  const speech = useSpeech();
  const words = useWords(controlTexts);
  const why = useWhy();
  const first = signals[0];
  const point = first && points[first.at];
  if (first === undefined || point === undefined) return words.quiet;
  const reasons = signals.filter(({ at }) => at === first.at).map(why);
  const later = new Set(signals.filter(({ at }) => at > first.at).map(({ at }) => at)).size;
  return (
    <>
      <b>{words.signal(speech.date(point.atMs), speech.force(point.valueN, unit), reasons.join("; "))}</b>{" "}
      {later > 0 && words.more(later)} {words.askFirst}
    </>
  );
}

function Figures({
  page,
  points,
  signals,
  unit,
}: {
  readonly page: SpindlePage;
  readonly points: readonly OwnPoint[];
  readonly signals: readonly ChartSignal[];
  readonly unit: ForceUnit;
}) {
  const speech = useSpeech();
  const words = useWords(controlTexts);
  const why = useWhy();
  const { spindleId } = page.row.spindle;
  return (
    <details>
      <summary>{words.figures}</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.colCheck}</th>
            <th scope="col" className="num">
              {words.plotForce(unitText(unit))}
            </th>
            <th scope="col">{words.colSignal}</th>
          </tr>
        </thead>
        <tbody>
          {points.map((point, i) => (
            <tr key={point.checkId}>
              <th scope="row">
                <a href={hrefOf({ place: "spindle", spindleId, checkId: point.checkId })}>{speech.date(point.atMs)}</a>
              </th>
              <td className="num">{speech.forceFigure(point.valueN, unit)}</td>
              <td>
                {signals
                  .filter(({ at }) => at === i)
                  .map(why)
                  .join("; ")}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
