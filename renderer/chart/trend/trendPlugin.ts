import type { Chart, Plugin } from "chart.js";
import { band, course, drawPoint, reach } from "./drawCourse.ts";
import { bands, baseline, events, levelWords, today } from "./drawFrame.ts";
import type { Scaled } from "./Scaled.ts";
import type { TrendView } from "./TrendView.ts";

/** Paints what chart.js has no kind for: limit bands, robust lines with their bands, services, seat marks with whiskers. */
export function trendPlugin(view: () => TrendView): Plugin<"scatter"> {
  return {
    id: "trend",
    beforeDatasetsDraw: (chart) => {
      const s = scaled(chart, view());
      clipped(s, () => {
        bands(s);
        for (const line of s.view.lines) band(s, line);
        baseline(s);
      });
      events(s);
      today(s);
    },
    afterDatasetsDraw: (chart) => {
      const s = scaled(chart, view());
      clipped(s, () => {
        for (const line of s.view.lines) course(s, line);
        for (const [i, mark] of s.view.marks.entries()) drawPoint(s, mark, i === s.view.picked);
      });
      levelWords(s);
      reach(s);
    },
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

function clipped({ c, left, right, top, bottom }: Scaled, draw: () => void): void {
  c.save();
  c.beginPath();
  c.rect(left, top, right - left + 8, bottom - top);
  c.clip();
  draw();
  c.restore();
}
