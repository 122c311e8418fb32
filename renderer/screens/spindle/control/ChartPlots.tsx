import { type ForceUnit, fromNewtons } from "../../../../app/quantity/forceUnits.ts";
import { forceDecimals } from "../../../../app/quantity/formatForce.ts";
import type { ChartSignal, LevelCharts } from "../../../../app/trend/control/levelCharts.ts";
import { unitText } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { type ChartKind, type OwnPoint, signalsOf } from "./chartOf.ts";
import { controlTexts } from "./controlTexts.ts";
import { LinePlot, type PlotLine } from "./LinePlot.tsx";
import { usePicked } from "./usePicked.ts";

/** Figures of a chart are told to ten newtons, as forces are elsewhere. */
const POINT_STEP_N = 10;

type Plot = {
  readonly what: string;
  readonly values: ArrayLike<number>;
  readonly lines: readonly PlotLine[];
  readonly signals: readonly number[];
  readonly fromZero?: boolean;
  /** Places of a figure that is told. */
  readonly decimals: number;
};

/** The chosen chart: values with their level and limits, ranges or sums below. */
export function ChartPlots({
  charts,
  points,
  kind,
  unit,
  why,
  open,
}: {
  readonly charts: LevelCharts;
  readonly points: readonly OwnPoint[];
  readonly kind: ChartKind;
  readonly unit: ForceUnit;
  /** Why a check signals, in words. */
  readonly why: (signal: ChartSignal) => string;
  readonly open: (at: number) => void;
}) {
  const speech = useSpeech();
  const words = useWords(controlTexts);
  const picked = usePicked(points.length, open);
  const plots = plotsOf();
  return (
    <>
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
              picked={picked}
            />
          </figure>
        ))}
      </div>
      <p className="small picked-line" aria-live="polite">
        {picked.at === undefined ? words.how : told(picked.at)}
      </p>
    </>
  );

  /** The check's figures, what each plot shows of it, and why it signals. */
  function told(at: number): string {
    const point = points[at];
    if (point === undefined) return words.how;
    const shown = plots.map(({ what, values, decimals }) =>
      values[at] !== undefined && Number.isFinite(values[at])
        ? `${what} ${speech.number(values[at], decimals)}`
        : undefined,
    );
    const reasons = signalsOf(charts, kind)
      .filter((signal) => signal.at === at)
      .map(why);
    return [
      speech.date(point.atMs),
      kind === "individuals" ? undefined : speech.force(point.valueN, unit),
      ...shown,
      ...reasons.map((reason) => words.signals(reason)),
    ]
      .filter((part) => part !== undefined)
      .join(" · ");
  }

  function plotsOf(): readonly Plot[] {
    const { individuals, ewma, cusum } = charts;
    const decimals = forceDecimals(unit, POINT_STEP_N);
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
          decimals,
        },
        {
          what: words.plotRange(unitText(unit)),
          values: inUnit(individuals.ranges),
          lines: [level(individuals.rangeUpper, words.limit, "limit")],
          signals: places(signals.filter(({ code }) => code === "rangeAbove")),
          fromZero: true,
          decimals,
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
          decimals,
        },
      ];
    }
    const sum = (side: "low" | "high", what: string): Plot => ({
      what,
      values: cusum[side],
      lines: [{ at: cusum.h, word: words.limit, kind: "limit" }],
      signals: places(signals.filter((signal) => signal.side === side)),
      fromZero: true,
      decimals: 2,
    });
    return [sum("low", words.sumLow), sum("high", words.sumHigh)];
  }
}
