import type { SpindlePage } from "../../../../app/contract/recordViews.ts";
import { type ForceUnit, fromNewtons } from "../../../../app/quantity/forceUnits.ts";
import { unitText } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { trendTexts } from "./trendTexts.ts";

const YEAR_DAYS = 365.25;
const MANY_CHANGES = 10_000;

/** The trend's figures for who wants them: each stretch with slope, interval and test, each step with size and interval. */
export function SegmentTable({ page, unit }: { readonly page: SpindlePage; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(trendTexts);
  const { trend } = page;
  const { axis } = trend;
  const place = (x: number) => (axis.kind === "date" ? speech.date(axis.originMs + x * 86_400_000) : speech.number(x));
  const per = axis.kind === "date" ? YEAR_DAYS : MANY_CHANGES;
  const slope = (perX: number | undefined | null) =>
    perX === undefined || perX === null ? words.noEnd : speech.number(fromNewtons(perX * per, unit), 2);
  const started = { first: words.startFirst, service: words.startService, step: words.startStep };
  const odds = (p: number | undefined) =>
    p === undefined ? words.cannotTell : p < 0.001 ? `< ${speech.number(0.001, 3)}` : speech.number(p, 3);
  return (
    <details>
      <summary>{words.figures}</summary>
      <div className="sideways">
        <table>
          <thead>
            <tr>
              <th scope="col">{words.colFrom}</th>
              <th scope="col">{words.colTo}</th>
              <th scope="col" className="num">
                {words.colN}
              </th>
              <th scope="col" className="num">
                {(axis.kind === "date" ? words.colSlope : words.colSlopeCounter)(unitText(unit))}
              </th>
              <th scope="col" className="num">
                {words.colInterval}
              </th>
              <th scope="col" className="num">
                {words.colP}
              </th>
            </tr>
          </thead>
          <tbody>
            {trend.segments.map((segment) => (
              <tr key={segment.from}>
                <td>
                  {place(segment.firstX)} <small>{started[segment.startedBy]}</small>
                </td>
                <td>{place(segment.lastX)}</td>
                <td className="num">{segment.n}</td>
                <td className="num">{segment.line === undefined ? "–" : slope(segment.line.slope)}</td>
                <td className="num">
                  {segment.line === undefined ? "–" : `${slope(segment.line.low)} … ${slope(segment.line.high)}`}
                </td>
                <td className="num">{odds(segment.memory.p)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {trend.steps.length > 0 && (
        <>
          <h3>{words.steps}</h3>
          <ul className="hints">
            {trend.steps.map((step) => {
              const within =
                typeof step.lowN === "number" && typeof step.highN === "number"
                  ? words.stepInterval(speech.force(step.lowN, unit), speech.force(step.highN, unit))
                  : "";
              const size = `${speech.force(step.sizeN, unit)} (${speech.percent(step.share, 1)})`;
              return (
                <li key={step.firstAfter}>
                  {`${place(step.x)}: ${size}${within}`}
                  {step.clear ? "" : words.stepUnclear}
                  {step.gaugeChanged || step.adapterChanged ? words.stepTool : ""}.
                </li>
              );
            })}
          </ul>
        </>
      )}
    </details>
  );
}
