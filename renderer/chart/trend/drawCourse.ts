import { CHART_FONT } from "../colours.ts";
import { drawMark } from "./drawMarks.ts";
import { line, type Scaled, write } from "./Scaled.ts";
import type { TrendLine, TrendMark } from "./TrendView.ts";

/** Between which values the true course lies; ahead of the last check it opens into a cone. */
export function band({ c, view, x, y }: Scaled, { points, lastX }: TrendLine): void {
  const known = points.filter((p) => p.low !== undefined && p.high !== undefined);
  if (known.length < 2) return;
  const shape = (part: typeof known, alpha: number) => {
    if (part.length < 2) return;
    c.globalAlpha = alpha;
    c.fillStyle = view.colours.ink;
    c.beginPath();
    for (const p of part) c.lineTo(x(p.x), y(p.high!)); // both were just seen to be there
    for (const p of part.toReversed()) c.lineTo(x(p.x), y(p.low!));
    c.fill();
    c.globalAlpha = 1;
  };
  shape(
    known.filter((p) => p.x <= lastX),
    0.15,
  );
  shape(
    known.filter((p) => p.x >= lastX),
    0.1,
  );
}

/** The robust line; dashed where nothing has been measured yet. */
export function course({ c, view, x, y }: Scaled, { points, lastX }: TrendLine): void {
  const stroke = (part: typeof points, dash: number[]) => {
    if (part.length < 2) return;
    c.strokeStyle = view.colours.ink;
    c.lineWidth = 2;
    c.setLineDash(dash);
    c.beginPath();
    for (const p of part) c.lineTo(x(p.x), y(p.mid));
    c.stroke();
    c.setLineDash([]);
  };
  stroke(
    points.filter((p) => p.x <= lastX),
    [],
  );
  stroke(
    points.filter((p) => p.x >= lastX),
    [7, 5],
  );
}

/** A check: its verdict by the seat, its uncertainty as a whisker. */
export function drawPoint({ c, view, x, y }: Scaled, mark: TrendMark, picked: boolean): void {
  const at = x(mark.x);
  const height = y(mark.valueN);
  const colour = mark.verdict === undefined ? view.colours.soft : view.colours[mark.verdict];
  c.strokeStyle = colour;
  c.lineWidth = 1.6;
  if (mark.expandedN !== undefined) line(c, at, y(mark.valueN - mark.expandedN), at, y(mark.valueN + mark.expandedN));
  const many = view.marks.length > 90;
  if (mark.verdict === undefined || many) {
    c.fillStyle = colour;
    c.beginPath();
    c.arc(at, height, many ? 3 : 4, 0, 7);
    c.fill();
  } else {
    // A rim of paper first, so that the mark is read on whisker and line.
    drawMark(c, at, height, mark.verdict, view.colours.sheet, 17, 4.5);
    drawMark(c, at, height, mark.verdict, colour, 17);
  }
  if (mark.toolChanged) {
    c.strokeStyle = view.colours.soft;
    c.lineWidth = 1.4;
    line(c, at - 5, height + 14, at + 5, height + 14);
    line(c, at - 2, height + 17, at + 8, height + 17);
  }
  if (!picked) return;
  c.strokeStyle = view.colours.ink;
  c.lineWidth = 2.5;
  c.strokeRect(at - 12, height - 14, 24, 26);
}

/** When a limit is reached, as an interval. */
export function reach(s: Scaled): void {
  const { c, view, x, left, right, bottom } = s;
  if (view.reach === undefined) return;
  const from = Math.max(left, x(view.reach.low));
  if (from > right) return;
  const to = Math.min(right, view.reach.high === undefined ? right : x(view.reach.high));
  const y = bottom - 30;
  c.strokeStyle = view.colours.ink;
  c.lineWidth = 2;
  line(c, from, y, to, y);
  line(c, from, y - 5, from, y + 5);
  if (view.reach.high !== undefined && x(view.reach.high) <= right) line(c, to, y - 5, to, y + 5);
  c.font = `600 13px ${CHART_FONT}`;
  const half = c.measureText(view.reach.label).width / 2;
  const middle = Math.min(Math.max((from + to) / 2, left + half + 4), right - half - 4);
  write(s, view.reach.label, { x: middle, y: y + 19, align: "center" }, "ink");
}
