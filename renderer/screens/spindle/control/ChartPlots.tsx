import { type ForceUnit, fromNewtons } from "../../../../app/quantity/forceUnits.ts";
import type { LevelCharts } from "../../../../app/trend/control/levelCharts.ts";
import { unitText } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { type ChartKind, type OwnPoint, signalsOf } from "./chartOf.ts";
import { controlTexts } from "./controlTexts.ts";
import { LinePlot, type PlotLine } from "./LinePlot.tsx";

type Plot = {
  readonly what: string;
  readonly values: ArrayLike<number>;
  readonly lines: readonly PlotLine[];
  readonly signals: readonly number[];
  readonly fromZero?: boolean;
};

/** The chosen chart: values with their level and limits, ranges or sums below. */
export function ChartPlots({
  charts,
  points,
  kind,
  unit,
}: {
  readonly charts: LevelCharts;
  readonly points: readonly OwnPoint[];
  readonly kind: ChartKind;
  readonly unit: ForceUnit;
}) {
  const speech = useSpeech();
  const words = useWords(controlTexts);
  const plots = plotsOf();
  return (
    <div className="plots">
      {plots.map(({ what, values, lines, signals, fromZero = false }) => (
        <figure key={what}>
          <figcaption className="small">{what}</figcaption>
          <LinePlot
            about={words.plotAbout(what, points.length, new Set(signals).size)}
            values={values}
            lines={lines}
            signals={signals}
            name={speech.number}
            ends={[speech.date(points[0]?.atMs ?? 0), speech.date(points.at(-1)?.atMs ?? 0)]}
            height={230}
            fromZero={fromZero}
            baseline={charts.baseline}
          />
        </figure>
      ))}
    </div>
  );

  function plotsOf(): readonly Plot[] {
    const { individuals, ewma, cusum } = charts;
    const inUnit = (forces: ArrayLike<number>) => Array.from(forces, (forceN) => fromNewtons(forceN, unit));
    const level = (forceN: number, word: string, as: PlotLine["kind"]) => ({
      at: fromNewtons(forceN, unit),
      word,
      kind: as,
    });
    const signals = signalsOf(charts, kind);
    const places = (of: typeof signals) => of.map(({ at }) => at);
    if (kind === "individuals") {
      return [
        {
          what: words.plotForce(unitText(unit)),
          values: inUnit(points.map(({ valueN }) => valueN)),
          lines: [
            level(individuals.center, words.center, "center"),
            level(individuals.upper, words.upper, "limit"),
            level(individuals.lower, words.lower, "limit"),
          ],
          signals: places(signals.filter(({ code }) => code !== "rangeAbove")),
        },
        {
          what: words.plotRange(unitText(unit)),
          values: inUnit(individuals.ranges),
          lines: [level(individuals.rangeUpper, words.limit, "limit")],
          signals: places(signals.filter(({ code }) => code === "rangeAbove")),
          fromZero: true,
        },
      ];
    }
    if (kind === "ewma") {
      const values = inUnit(ewma.values);
      return [
        {
          what: words.plotAverage(unitText(unit)),
          values,
          lines: [
            level(ewma.center, words.center, "center"),
            { at: inUnit(ewma.upper), word: words.upper, kind: "limit" },
            { at: inUnit(ewma.lower), word: words.lower, kind: "limit" },
          ],
          signals: places(signals),
        },
      ];
    }
    const sum = (side: "low" | "high", what: string): Plot => ({
      what,
      values: cusum[side],
      lines: [{ at: cusum.h, word: words.limit, kind: "limit" }],
      signals: places(signals.filter((signal) => signal.side === side)),
      fromZero: true,
    });
    return [sum("low", words.sumLow), sum("high", words.sumHigh)];
  }
}
