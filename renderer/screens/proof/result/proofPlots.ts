import { type ForceUnit, fromNewtons } from "../../../../app/quantity/forceUnits.ts";
import { spanOf } from "../../../chart/proof/PlotView.ts";
import type { Plot } from "../plot/PlotFigure.tsx";
import type { resultTexts } from "./resultTexts.ts";
import type { ShownResult } from "./ShownResult.ts";

type Said = (typeof resultTexts)["en"];

const percentOf = (part: number, whole: number) => (100 * part) / whole;

/** Errors by step: means with their uncertainty, single runs as open marks, what is permitted between dashed lines. */
export function errorsPlot({ result, loads }: ShownResult, unit: ForceUnit, words: Said, unitName: string): Plot {
  const steps = result.steps.filter(({ referenceN }) => referenceN > 0);
  const runs = [...new Set(loads.map(({ run }) => run))];
  const means = steps.map((step) => ({
    x: fromNewtons(step.referenceN, unit),
    y: percentOf(step.errorN, step.referenceN),
    half: percentOf(step.uncertainty.expandedN, step.referenceN),
    series: 0,
  }));
  const single = loads
    .filter(({ referenceN }) => referenceN > 0)
    .map(({ run, referenceN, netN }) => ({
      x: fromNewtons(referenceN, unit),
      y: percentOf(netN - referenceN, referenceN),
      half: undefined,
      series: 1 + runs.indexOf(run),
    }));
  const greatest = Math.max(...steps.map(({ referenceN }) => fromNewtons(referenceN, unit)));
  const band = steps.flatMap(({ referenceN, permissibleN }) => {
    if (permissibleN === null) return [];
    const half = percentOf(permissibleN, referenceN);
    return [{ x: fromNewtons(referenceN, unit), low: -half, high: half }];
  });
  const tall = spanOf([
    0,
    ...means.flatMap(({ y, half }) => [y - half, y + half]),
    ...single.map(({ y }) => y),
    ...band.flatMap(({ low, high }) => [low, high]),
  ]);
  return {
    points: [...single, ...means],
    series: [{ word: words.mean, solid: true }, ...runs.map((run) => ({ word: words.runOf(run), solid: false }))],
    lines: [
      { points: [0, greatest].map((x) => ({ x, y: 0 })), kind: "zero" },
      ...(band.length === 0
        ? []
        : ([
            { points: band.map(({ x, high }) => ({ x, y: high })), kind: "limit", word: words.permitted },
            { points: band.map(({ x, low }) => ({ x, y: low })), kind: "limit" },
          ] as const)),
    ],
    band,
    xTitle: words.axisForce(unitName),
    yTitle: words.axisError,
    minX: 0,
    maxX: greatest * 1.04,
    minY: tall.min,
    maxY: tall.max,
  };
}

/** What the curve leaves of each reading that was fitted; undefined without a curve, or where it is not known which reading is which. */
export function residualsPlot(
  { result, loads }: ShownResult,
  unit: ForceUnit,
  words: Said,
  unitName: string,
): Plot | undefined {
  const { fit } = result;
  if (fit === null) return undefined;
  const places =
    fit.residualsN.length === loads.length
      ? loads
      : fit.residualsN.length === result.steps.length
        ? result.steps.map(({ referenceN }) => ({ run: words.mean, referenceN }))
        : undefined;
  if (places === undefined) return undefined;
  const runs = [...new Set(places.map(({ run }) => run))];
  const points = places.map(({ run, referenceN }, i) => ({
    x: fromNewtons(referenceN, unit),
    y: fromNewtons(fit.residualsN[i]!, unit),
    half: undefined,
    series: runs.indexOf(run),
  }));
  const greatest = Math.max(...points.map(({ x }) => x));
  const tall = spanOf([0, ...points.map(({ y }) => y)]);
  return {
    points,
    series: runs.map((run) => ({ word: run === words.mean ? run : words.runOf(run), solid: false })),
    lines: [{ points: [0, greatest].map((x) => ({ x, y: 0 })), kind: "zero" }],
    band: [],
    xTitle: words.axisForce(unitName),
    yTitle: words.axisResidual(unitName),
    minX: 0,
    maxX: greatest * 1.04,
    minY: tall.min,
    maxY: tall.max,
  };
}

/** Shown against force: the steps and the curve through them. */
export function curvePlot({ result }: ShownResult, unit: ForceUnit, words: Said, unitName: string): Plot | undefined {
  const { fit, steps } = result;
  if (fit === null) return undefined;
  const points = steps.map(({ referenceN, netN }) => ({
    x: fromNewtons(referenceN, unit),
    y: fromNewtons(netN, unit),
    half: undefined,
    series: 0,
  }));
  const greatestN = Math.max(...steps.map(({ referenceN }) => referenceN));
  const at = (x: number) => fit.coefficients.reduceRight((sum, c) => sum * x + c, 0);
  const course = Array.from({ length: 61 }, (_, i) => (greatestN * i) / 60);
  const tall = spanOf([0, ...points.map(({ y }) => y)], 0.05);
  return {
    points,
    series: [{ word: words.mean, solid: true }],
    lines: [{ points: course.map((x) => ({ x: fromNewtons(x, unit), y: fromNewtons(at(x), unit) })), kind: "curve" }],
    band: [],
    xTitle: words.axisForce(unitName),
    yTitle: words.axisShown(unitName),
    minX: 0,
    maxX: fromNewtons(greatestN, unit) * 1.04,
    minY: tall.min,
    maxY: tall.max,
  };
}
