import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import type { Plot } from "../plot/PlotFigure.tsx";
import { resultTexts } from "./resultTexts.ts";

/** A plot's points in figures, as its axes name them. */
export function PointTable({
  plot,
  decimals,
}: {
  readonly plot: Plot;
  /** Of the x axis and the y axis. */
  readonly decimals: readonly [number, number];
}) {
  const speech = useSpeech();
  const words = useWords(resultTexts);
  const withU = plot.points.some(({ half }) => half !== undefined);
  const placed = plot.points.map((point, i) => ({ ...point, i })).sort((a, b) => a.x - b.x || a.series - b.series);
  return (
    <table>
      <thead>
        <tr>
          <th scope="col" className="num">
            {plot.xTitle}
          </th>
          {plot.series.length > 1 && <th scope="col">{words.colWhich}</th>}
          <th scope="col" className="num">
            {plot.yTitle}
          </th>
          {withU && (
            <th scope="col" className="num">
              U
            </th>
          )}
        </tr>
      </thead>
      <tbody>
        {placed.map(({ x, y, half, series, i }) => (
          <tr key={i}>
            <th scope="row" className="num">
              {plot.xTicks?.find((tick) => tick.x === x)?.label ?? speech.number(x, decimals[0])}
            </th>
            {plot.series.length > 1 && <td>{plot.series[series]?.word}</td>}
            <td className="num">{speech.number(y, decimals[1])}</td>
            {withU && <td className="num">{half === undefined ? "" : speech.number(half, decimals[1])}</td>}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
