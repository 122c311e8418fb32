import { Chart, LinearScale, PointElement, ScatterController } from "chart.js";
import { CHART_FONT } from "../colours.ts";
import type { TrendView } from "./TrendView.ts";
import { trendPlugin } from "./trendPlugin.ts";

Chart.register(ScatterController, PointElement, LinearScale);

export type TrendChart = {
  /** Draws another view: the chart is one object for its life, only its data change. */
  readonly show: (view: TrendView) => void;
  /** x under a place on the canvas, in its own pixels from the left; held inside the axes. */
  readonly xAt: (left: number) => number;
  readonly destroy: () => void;
};

/**
 * One trend chart on a canvas. Chart.js holds axes, layout and what lies under the pointer; the drawing is ours.
 * @param onPick  the mark under the pointer changed, or was pressed
 */
export function createTrendChart(
  canvas: HTMLCanvasElement,
  first: TrendView,
  onPick: (mark: number | undefined, pressed: boolean) => void,
): TrendChart {
  let view = first;
  let picked: number | undefined;
  const pick = (mark: number | undefined, pressed: boolean) => {
    if (mark === picked && !pressed) return;
    picked = mark;
    onPick(mark, pressed);
  };
  const chart = new Chart<"scatter">(canvas, {
    type: "scatter",
    data: {
      datasets: [
        {
          data: [],
          pointRadius: 9,
          pointHoverRadius: 9,
          pointBackgroundColor: "transparent",
          pointBorderColor: "transparent",
        },
      ],
    },
    plugins: [trendPlugin(() => view)],
    options: {
      animation: false,
      responsive: true,
      maintainAspectRatio: false,
      normalized: true,
      parsing: false,
      layout: { padding: { top: 26, right: 12 } },
      interaction: { mode: "nearest", intersect: false, axis: "x" },
      onHover: (_event, elements) => pick(elements[0]?.index, false),
      onClick: (_event, elements) => pick(elements[0]?.index, true),
      scales: {
        x: { type: "linear", grid: { display: false }, border: {}, ticks: {} },
        y: { type: "linear", grid: { display: false }, border: {}, ticks: {} },
      },
    },
  });
  const show = (next: TrendView) => {
    view = next;
    const { colours } = next;
    const tickFont = { family: CHART_FONT, size: 13 };
    chart.data.datasets[0]!.data = next.marks.map(({ x, valueN }) => ({ x, y: valueN / next.unitN }));
    chart.options.scales = {
      x: {
        type: "linear",
        min: next.minX,
        max: next.maxX,
        grid: { display: false },
        border: { color: colours.edge },
        afterBuildTicks: (axis) => {
          axis.ticks = next.ticks.map(({ x }) => ({ value: x }));
        },
        ticks: {
          color: colours.soft,
          font: tickFont,
          autoSkip: false,
          maxRotation: 0,
          callback: (value) => next.ticks.find(({ x }) => x === value)?.label ?? "",
        },
      },
      y: {
        type: "linear",
        min: next.minN / next.unitN,
        max: next.maxN / next.unitN,
        grid: { display: false },
        border: { color: colours.edge },
        ticks: {
          color: colours.soft,
          font: tickFont,
          maxTicksLimit: 8,
          callback: (value, i, ticks) => tickText(Number(value), i, ticks.length, next),
        },
      },
    };
    chart.update("none");
  };
  show(first);
  let gone = false;
  document.fonts?.ready.then(() => {
    if (!gone) chart.update("none"); // labels were measured in another font until now
  });
  const destroy = () => {
    gone = true;
    chart.destroy();
  };
  const xAt = (left: number) => {
    const { chartArea, scales } = chart;
    const inside = Math.min(chartArea.right, Math.max(chartArea.left, left));
    return scales.x?.getValueForPixel(inside) ?? view.minX;
  };
  return { show, xAt, destroy };
}

/** The ends of the axis stand at odd values and are left bare. */
function tickText(value: number, i: number, count: number, view: TrendView): string {
  const round = Math.abs(value * 20 - Math.round(value * 20)) < 1e-6;
  if ((i === 0 || i === count - 1) && !round) return "";
  return view.number(value, Number.isInteger(value) ? 0 : Math.abs(value * 10 - Math.round(value * 10)) < 1e-6 ? 1 : 2);
}
