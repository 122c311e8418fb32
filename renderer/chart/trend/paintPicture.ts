import { CHART_FONT } from "../colours.ts";
import { niceTicks } from "../niceTicks.ts";
import type { Pen } from "../Pen.ts";
import { paintBehind, paintFront } from "./paintTrend.ts";
import { line, type Scaled } from "./Scaled.ts";
import type { TrendView } from "./TrendView.ts";

const MARGIN = { left: 64, right: 20, top: 84, bottom: 40 };
export const PICTURE = { width: 1200, height: 640 };

/** The trend as a picture of its own, with title and axes: for a report or a message. */
export function paintPicture(
  c: Pen,
  view: TrendView,
  texts: { readonly title: string; readonly about: string; readonly unit: string },
): void {
  const { width, height } = PICTURE;
  const { colours, unitN } = view;
  const [left, right, top, bottom] = [MARGIN.left, width - MARGIN.right, MARGIN.top, height - MARGIN.bottom];
  const s: Scaled = {
    c,
    view,
    left,
    right,
    top,
    bottom,
    x: (x) => left + ((x - view.minX) / (view.maxX - view.minX)) * (right - left),
    y: (forceN) => bottom - ((forceN - view.minN) / (view.maxN - view.minN)) * (bottom - top),
  };
  c.fillStyle = colours.sheet;
  c.fillRect(0, 0, width, height);
  text(c, texts.title, { x: left, y: 30, colour: colours.ink, font: 600, size: 20 });
  text(c, texts.about, { x: left, y: 52, colour: colours.soft });
  paintBehind(s);
  axes(s, texts.unit, niceTicks(view.minN / unitN, view.maxN / unitN, 7));
  paintFront(s);
}

function axes(s: Scaled, unit: string, ticks: ReturnType<typeof niceTicks>): void {
  const { c, view, left, right, top, bottom } = s;
  const { colours } = view;
  c.strokeStyle = colours.edge;
  c.lineWidth = 1;
  line(c, left, top, left, bottom);
  line(c, left, bottom, right, bottom);
  text(c, unit, { x: left - 8, y: top - 10, colour: colours.soft, align: "right" });
  for (const value of ticks.values) {
    const y = s.y(value * view.unitN);
    line(c, left - 5, y, left, y);
    text(c, view.number(value, ticks.decimals), { x: left - 8, y: y + 4, colour: colours.soft, align: "right" });
  }
  for (const { x, label } of view.ticks) {
    if (x < view.minX || x > view.maxX) continue;
    line(c, s.x(x), bottom, s.x(x), bottom + 5);
    text(c, label, { x: s.x(x), y: bottom + 20, colour: colours.soft, align: "center" });
  }
}

function text(
  c: Pen,
  words: string,
  at: {
    readonly x: number;
    readonly y: number;
    readonly colour: string;
    readonly align?: CanvasTextAlign;
    readonly font?: number;
    readonly size?: number;
  },
): void {
  c.font = `${at.font ?? 400} ${at.size ?? 13}px ${CHART_FONT}`;
  c.textAlign = at.align ?? "left";
  c.fillStyle = at.colour;
  c.fillText(words, at.x, at.y);
}
