import { CHART_FONT } from "../colours.ts";
import { niceTicks } from "../niceTicks.ts";
import type { Pen } from "../Pen.ts";
import { drawShape } from "./drawShape.ts";
import { frameOf, type PlotFrame } from "./PlotFrame.ts";
import type { PlotLine, PlotView } from "./PlotView.ts";

type Scene = { readonly c: Pen; readonly view: PlotView; readonly f: PlotFrame };

/** A chart of a proof: what is allowed, the curve, each step with its uncertainty. The same on canvas and in a file. */
export function paintPlot(c: Pen, view: PlotView, width: number, height: number): void {
  const scene = { c, view, f: frameOf(view, width, height) };
  axes(scene);
  inside(scene, () => {
    band(scene);
    for (const line of view.lines) course(scene, line);
    whiskers(scene);
    marks(scene);
  });
  words(scene);
}

function inside({ c, f }: Scene, draw: () => void): void {
  c.save();
  c.beginPath();
  c.rect(f.left - 9, f.top - 9, f.right - f.left + 18, f.bottom - f.top + 18);
  c.clip();
  draw();
  c.restore();
}

function axes({ c, view, f }: Scene): void {
  const { colours } = view;
  const yTicks = niceTicks(view.minY, view.maxY, Math.max(2, (f.bottom - f.top) / 52));
  const xTicks = niceTicks(view.minX, view.maxX, Math.max(2, (f.right - f.left) / 90));
  const named = view.xTicks ?? xTicks.values.map((value) => ({ x: value, label: view.number(value, xTicks.decimals) }));
  c.setLineDash([]);
  c.lineWidth = 1;
  c.strokeStyle = colours.line;
  for (const value of yTicks.values) stroke(c, f.left, f.y(value), f.right, f.y(value));
  c.strokeStyle = colours.edge;
  stroke(c, f.left, f.top, f.left, f.bottom);
  stroke(c, f.left, f.bottom, f.right, f.bottom);
  for (const value of yTicks.values)
    text(c, view.number(value, yTicks.decimals), f.left - 8, f.y(value) + 4.5, colours.soft, "right");
  for (const { x, label } of named) {
    if (x < view.minX || x > view.maxX) continue;
    stroke(c, f.x(x), f.bottom, f.x(x), f.bottom + 5);
    text(c, label, f.x(x), f.bottom + 19, colours.soft, "center");
  }
  text(c, view.yTitle, f.left - 60, f.top - 16, colours.soft, "left");
  text(c, view.xTitle, f.right, f.bottom + 37, colours.soft, "right");
}

function band({ c, view, f }: Scene): void {
  if (view.band.length < 2) return;
  c.fillStyle = view.colours.bandGood;
  c.beginPath();
  for (const [i, p] of view.band.entries()) {
    if (i === 0) c.moveTo(f.x(p.x), f.y(p.high));
    else c.lineTo(f.x(p.x), f.y(p.high));
  }
  for (const p of view.band.toReversed()) c.lineTo(f.x(p.x), f.y(p.low));
  c.closePath();
  c.fill();
}

const looks = {
  curve: { role: "ink", width: 1.8, dash: [] },
  limit: { role: "soft", width: 1.2, dash: [5, 4] },
  zero: { role: "edge", width: 1.2, dash: [] },
} as const;

function course({ c, view, f }: Scene, { points, kind }: PlotLine): void {
  const look = looks[kind];
  c.strokeStyle = view.colours[look.role];
  c.lineWidth = look.width;
  c.setLineDash(look.dash);
  c.beginPath();
  for (const [i, p] of points.entries()) {
    if (i === 0) c.moveTo(f.x(p.x), f.y(p.y));
    else c.lineTo(f.x(p.x), f.y(p.y));
  }
  c.stroke();
  c.setLineDash([]);
}

/** Each is closed with a short stroke, so that it is not taken for a part of the grid. */
function whiskers({ c, view, f }: Scene): void {
  c.strokeStyle = view.colours.ink;
  c.lineWidth = 1.6;
  for (const { x, y, half } of view.points) {
    if (half === undefined) continue;
    const [at, low, high] = [f.x(x), f.y(y - half), f.y(y + half)];
    stroke(c, at, low, at, high);
    stroke(c, at - 5, low, at + 5, low);
    stroke(c, at - 5, high, at + 5, high);
  }
}

function marks({ c, view, f }: Scene): void {
  for (const [i, { x, y, series }] of view.points.entries()) {
    const solid = view.series[series]?.solid ?? true;
    const at = { x: f.x(x), y: f.y(y), size: solid ? 5.5 : 4.6 };
    drawShape(c, at, { shape: series, solid, ink: view.colours.ink, paper: view.colours.sheet });
    if (i !== view.picked) continue;
    c.strokeStyle = view.colours.ink;
    c.lineWidth = 2.5;
    c.strokeRect(at.x - 12, at.y - 12, 24, 24);
  }
}

/** What a line means, at its end over a rim of paper, and which mark is which run. */
function words({ c, view, f }: Scene): void {
  for (const { points, word } of view.lines) {
    const end = points.at(-1);
    if (word === undefined || end === undefined || end.y < view.minY || end.y > view.maxY) continue;
    const up = end.y >= (view.minY + view.maxY) / 2 || f.y(end.y) > f.bottom - 20;
    c.font = `400 13px ${CHART_FONT}`;
    c.textAlign = "right";
    c.lineJoin = "round";
    c.lineWidth = 3;
    c.strokeStyle = view.colours.sheet;
    c.strokeText(word, f.right - 6, f.y(end.y) + (up ? -6 : 16));
    text(c, word, f.right - 6, f.y(end.y) + (up ? -6 : 16), view.colours.soft, "right");
  }
  if (view.series.length < 2) return;
  let right = f.right;
  for (const [shape, { word, solid }] of [...view.series.entries()].toReversed()) {
    text(c, word, right, f.top - 16, view.colours.soft, "right");
    right -= c.measureText(word).width + 12;
    const look = { shape, solid, ink: view.colours.ink, paper: view.colours.sheet };
    drawShape(c, { x: right, y: f.top - 20.5, size: 5 }, look);
    right -= 22;
  }
}

function stroke(c: Pen, x1: number, y1: number, x2: number, y2: number): void {
  c.beginPath();
  c.moveTo(x1, y1);
  c.lineTo(x2, y2);
  c.stroke();
}

function text(c: Pen, words: string, x: number, y: number, colour: string, align: CanvasTextAlign): void {
  c.font = `400 13px ${CHART_FONT}`;
  c.textAlign = align;
  c.fillStyle = colour;
  c.fillText(words, x, y);
}
