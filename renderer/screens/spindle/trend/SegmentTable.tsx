import type { SpindlePage } from "../../../../app/contract/recordViews.ts";
import { type ForceUnit, fromNewtons } from "../../../../app/quantity/forceUnits.ts";
import { serviceTexts } from "../../../words/records/recordTexts.ts";
import { unitText } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { trendTexts } from "./trendTexts.ts";

const YEAR_DAYS = 365.25;

/** The trend's figures for who wants them: each stretch with slope, interval and test, and what each service did. */
export function SegmentTable({ page, unit }: { readonly page: SpindlePage; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(trendTexts);
  const services = useWords(serviceTexts);
  const { trend } = page;
  if (trend.axis.kind !== "date") return null;
  const { originMs } = trend.axis;
  const day = (x: number) => speech.date(originMs + x * 86_400_000);
  const yearly = (perDay: number | undefined | null) =>
    perDay === undefined || perDay === null ? words.noEnd : speech.number(fromNewtons(perDay * YEAR_DAYS, unit), 2);
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
                {words.colSlope(unitText(unit))}
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
                  {day(segment.firstX)} <small>{started[segment.startedBy]}</small>
                </td>
                <td>{day(segment.lastX)}</td>
                <td className="num">{segment.n}</td>
                <td className="num">{segment.line === undefined ? "–" : yearly(segment.line.slope)}</td>
                <td className="num">
                  {segment.line === undefined ? "–" : `${yearly(segment.line.low)} … ${yearly(segment.line.high)}`}
                </td>
                <td className="num">{odds(segment.memory.p)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {trend.services.length > 0 && (
        <>
          <h3>{words.effect}</h3>
          <ul className="hints">
            {trend.services.map((effect) => {
              const change = speech.force(Math.abs(effect.changeN), unit);
              const judged = {
                rose: words.rose(change),
                fell: words.fell(change),
                unchanged: words.unchanged,
                cannotTell: words.cannotTell,
              }[effect.judged];
              const tools = effect.otherGauge || effect.otherAdapter ? ` (${words.otherTools})` : "";
              return (
                <li
                  key={`${effect.atMs}${effect.kind}`}
                >{`${speech.date(effect.atMs)}, ${services[effect.kind]}: ${judged}${tools}`}</li>
              );
            })}
          </ul>
        </>
      )}
    </details>
  );
}
