import type { Chart, Plugin } from "chart.js";
import { paintBehind, paintFront } from "./paintTrend.ts";
import type { Scaled } from "./Scaled.ts";
import type { TrendView } from "./TrendView.ts";

/** Paints what chart.js has no kind for: limit bands, robust lines with their bands, services, seat marks with whiskers. */
export function trendPlugin(view: () => TrendView): Plugin<"scatter"> {
  return {
    id: "trend",
    beforeDatasetsDraw: (chart) => paintBehind(scaled(chart, view())),
    afterDatasetsDraw: (chart) => paintFront(scaled(chart, view())),
  };
}

function scaled(chart: Chart<"scatter">, view: TrendView): Scaled {
  const { left, right, top, bottom } = chart.chartArea;
  const { x, y } = chart.scales;
  if (x === undefined || y === undefined) throw new Error("the trend chart has lost its axes");
  return {
    c: chart.ctx,
    view,
    left,
    right,
    top,
    bottom,
    x: (value) => x.getPixelForValue(value),
    y: (forceN) => y.getPixelForValue(forceN / view.unitN),
  };
}
