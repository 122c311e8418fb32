import { describe, expect, it } from "vitest";
import { coloursOf } from "../../../../renderer/chart/colours.ts";
import { frameOf, pointAt } from "../../../../renderer/chart/proof/PlotFrame.ts";
import { type PlotView, spanOf } from "../../../../renderer/chart/proof/PlotView.ts";
import { plotDrawing } from "../../../../renderer/chart/proof/plotDrawing.ts";
import { svgOf } from "../../../../renderer/chart/saveDrawing.ts";

const view: PlotView = {
  points: [
    { x: 5, y: 0.2, half: 0.1, series: 0 },
    { x: 10, y: -0.1, half: 0.05, series: 0 },
    { x: 10, y: 0.05, half: undefined, series: 1 },
  ],
  series: [
    { word: "mean", solid: true },
    { word: "run 1", solid: false },
  ],
  lines: [{ points: [0, 12].map((x) => ({ x, y: 0.5 })), kind: "limit", word: "most 0.5 %" }],
  band: [0, 12].map((x) => ({ x, low: -0.5, high: 0.5 })),
  xTitle: "kN",
  yTitle: "error, %",
  minX: 0,
  maxX: 12,
  minY: -1,
  maxY: 1,
  number: (value, decimals) => value.toFixed(decimals),
  colours: coloursOf("light"),
  picked: undefined,
};

describe("a plot of a proof", () => {
  const text = svgOf(plotDrawing(view, { title: "Gauge 1", about: "errors" }), (word) => word.length * 7);
  const picture = new DOMParser().parseFromString(text, "image/svg+xml");
  const strokes = [...picture.querySelectorAll("path")].map((path) => ({
    width: path.getAttribute("stroke-width"),
    at: path
      .getAttribute("d")!
      .match(/-?[\d.]+/g)!
      .map(Number),
  }));

  it("draws a whisker as long as the uncertainty at the load's own place", () => {
    expect(picture.querySelector("parsererror")).toBeNull();
    const upright = strokes.filter(({ width, at }) => width === "1.6" && at.length === 4 && at[0] === at[2]);
    expect(upright).toHaveLength(2);
    const frame = frameOf(view, 1200, 640 - 62);
    const perPercent = frame.y(0) - frame.y(1);
    expect(upright[0]!.at[0]).toBeCloseTo(frame.x(5), 1);
    expect(Math.abs(upright[0]!.at[1]! - upright[0]!.at[3]!)).toBeCloseTo(0.2 * perPercent, 1);
    expect(Math.abs(upright[1]!.at[1]! - upright[1]!.at[3]!)).toBeCloseTo(0.1 * perPercent, 1);
  });

  it("says the limit, the axes and each series in words", () => {
    const said = [...picture.querySelectorAll("text")].map((one) => one.textContent);
    for (const word of ["Gauge 1", "errors", "most 0.5 %", "kN", "error, %", "mean", "run 1"])
      expect(said).toContain(word);
  });

  it("finds the point that is near, and none where none is", () => {
    const frame = frameOf(view, 600, 300);
    expect(pointAt(view, frame, { x: frame.x(10) + 4, y: frame.y(-0.1) + 3 })).toBe(1);
    expect(pointAt(view, frame, { x: frame.x(10), y: frame.y(0.05) - 1 })).toBe(2);
    expect(pointAt(view, frame, { x: frame.x(1), y: frame.y(0.9) })).toBeUndefined();
  });
});

describe("spanOf", () => {
  it("leaves room at both ends, and has a width for a value that stands alone", () => {
    expect(spanOf([1, 3], 0.1)).toEqual({ min: 0.8, max: 3.2 });
    expect(spanOf([2, 2], 0.1)).toEqual({ min: 1.8, max: 2.2 });
    expect(spanOf([0])).toEqual({ min: -0.08, max: 0.08 });
  });

  it("passes over what is no figure", () => {
    expect(spanOf([Number.NaN, Infinity])).toEqual({ min: 0, max: 1 });
  });
});
