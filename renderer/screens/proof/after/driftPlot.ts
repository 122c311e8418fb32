import type { ProofDrift } from "../../../../app/proof/after/driftOfProofs.ts";
import { defaultIntervalRule } from "../../../../app/proof/after/nextProofDue.ts";
import { daysBetween } from "../../../../app/proof/data/plainDate.ts";
import { spanOf } from "../../../chart/proof/PlotView.ts";
import type { Plot } from "../plot/PlotFigure.tsx";
import type { afterTexts } from "./afterTexts.ts";

/** Changes from proof to proof over the days; between the dashed lines lies what the interval rule takes as acceptable. */
export function driftPlot(
  { steps }: ProofDrift,
  words: (typeof afterTexts)["en"],
  plainDate: (day: string) => string,
): Plot {
  const first = steps[0]?.from ?? "2000-01-01";
  const day = (on: string) => daysBetween(first, on);
  const points = steps.map(({ to, worst }) => ({
    x: day(to),
    y: 100 * worst.relative,
    half: 100 * worst.expanded,
    series: 0,
  }));
  const allowed = 100 * defaultIntervalRule.allowed;
  const wide = spanOf([0, ...points.map(({ x }) => x)], 0.05);
  const tall = spanOf([allowed, -allowed, ...points.flatMap(({ y, half }) => [y - half, y + half])]);
  const across = (y: number) => [wide.min, wide.max].map((x) => ({ x, y }));
  return {
    points,
    series: [{ word: words.changeWord, solid: true }],
    lines: [
      { points: across(0), kind: "zero" },
      { points: across(allowed), kind: "limit" },
      { points: across(-allowed), kind: "limit" },
    ],
    band: [wide.min, wide.max].map((x) => ({ x, low: -allowed, high: allowed })),
    xTitle: words.axisDay,
    yTitle: words.axisDrift,
    xTicks: steps.map(({ to }) => ({ x: day(to), label: plainDate(to) })),
    minX: wide.min,
    maxX: wide.max,
    minY: tall.min,
    maxY: tall.max,
  };
}
