import { CHART_FONT } from "../colours.ts";
import type { Pen } from "../Pen.ts";
import type { TrendView } from "./TrendView.ts";

/** A view with the places of its values on the canvas. */
export type Scaled = {
  readonly c: Pen;
  readonly view: TrendView;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: (x: number) => number;
  readonly y: (forceN: number) => number;
};

export function line(c: Pen, x1: number, y1: number, x2: number, y2: number): void {
  c.beginPath();
  c.moveTo(x1, y1);
  c.lineTo(x2, y2);
  c.stroke();
}

/** A label with a rim of paper, so that it is read on lines and bands. */
export function write(
  { c, view }: Scaled,
  text: string,
  at: { readonly x: number; readonly y: number; readonly align: CanvasTextAlign },
  role: "ink" | "soft",
): void {
  c.font = `${role === "ink" ? 600 : 400} 13px ${CHART_FONT}`;
  c.textAlign = at.align;
  c.setLineDash([]);
  c.lineJoin = "round";
  c.lineWidth = 3;
  c.strokeStyle = view.colours.sheet;
  c.strokeText(text, at.x, at.y);
  c.fillStyle = view.colours[role];
  c.fillText(text, at.x, at.y);
}
