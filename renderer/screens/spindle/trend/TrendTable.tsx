import type { SpindlePage } from "../../../../app/contract/recordViews.ts";
import { type ForceUnit, fromNewtons } from "../../../../app/quantity/forceUnits.ts";
import { uncertaintyDecimals } from "../../../../app/words/uncertaintyDecimals.ts";
import type { TrendView } from "../../../chart/trend/TrendView.ts";
import { hrefOf } from "../../../state/routeStore.ts";
import { VerdictWord } from "../../../ui/verdict/VerdictWord.tsx";
import { unitText } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { trendTexts } from "./trendTexts.ts";

type Shown = Pick<TrendView, "marks" | "events">;

/** The chart's data as a table: each check with its place on the robust line, services and steps where they stand. */
export function TrendTable({
  page,
  view,
  unit,
}: {
  readonly page: SpindlePage;
  readonly view: Shown;
  readonly unit: ForceUnit;
}) {
  const speech = useSpeech();
  const words = useWords(trendTexts);
  const { trend } = page;
  const { axis } = trend;
  const at = (x: number) => (axis.kind === "date" ? speech.date(axis.originMs + x * 86_400_000) : speech.number(x));
  const points = new Map(trend.points.map((point) => [point.checkId, point]));
  const figure = (forceN: number, decimals: number) => speech.number(fromNewtons(forceN, unit), decimals);
  const rows = [
    ...view.marks.map((mark) => ({ x: mark.x, mark, label: "" })),
    ...view.events.map((event) => ({ x: event.x, mark: undefined, label: event.label })),
  ].sort((a, b) => a.x - b.x || Number(a.mark !== undefined) - Number(b.mark !== undefined));
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a stretch that scrolls is reached by the keys too
    <section className="table-view" aria-label={words.asTable} tabIndex={0}>
      <table>
        <thead>
          <tr>
            <th scope="col">{axis.kind === "date" ? words.colDate : words.colCounter}</th>
            <th scope="col" className="num">
              {words.colForce(unitText(unit))}
            </th>
            <th scope="col" className="num">
              {words.colLine(unitText(unit))}
            </th>
            <th scope="col">{words.colVerdict}</th>
            <th scope="col">{words.colWhat}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ x, mark, label }) => {
            if (mark === undefined) {
              return (
                <tr key={`${x}${label}`}>
                  <th scope="row">{at(x)}</th>
                  <td colSpan={3} />
                  <td>{label}</td>
                </tr>
              );
            }
            const point = points.get(mark.checkId);
            const line = point === undefined ? undefined : trend.segments[point.segment]?.line;
            const within = mark.expandedN === undefined ? undefined : fromNewtons(mark.expandedN, unit);
            const decimals = within === undefined || !(within > 0) ? 2 : uncertaintyDecimals(within);
            const { spindleId } = page.row.spindle;
            return (
              <tr key={mark.checkId}>
                <th scope="row">
                  <a href={hrefOf({ place: "spindle", spindleId, checkId: mark.checkId })}>{at(x)}</a>
                </th>
                <td className="num">
                  {figure(mark.valueN, decimals)}
                  {within !== undefined && <span className="soft">{` ± ${speech.number(within, decimals)}`}</span>}
                </td>
                <td className="num">
                  {line === undefined ? "–" : figure(line.intercept + line.slope * mark.x, decimals)}
                </td>
                <td>{mark.verdict !== undefined && <VerdictWord verdict={mark.verdict} />}</td>
                <td>
                  {[mark.toolChanged ? words.tool("") : "", point?.stray === true ? words.stray : ""]
                    .filter((part) => part !== "")
                    .join("; ")}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
