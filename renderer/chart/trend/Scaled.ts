import { CHART_FONT } from "../colours.ts";
import type { TrendView } from "./TrendView.ts";

/** A view with the places of its values on the canvas. */
export type Scaled = {
  readonly c: CanvasRenderingContext2D;
  readonly view: TrendView;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: (x: number) => number;
  readonly y: (forceN: number) => number;
};

export function line(c: CanvasRenderingContext2D, x1: number, y1: number, x2: number, y2: number): void {
  c.beginPath();
  c.moveTo(x1, y1);
  c.lineTo(x2, y2);
  c.stroke();
}

export function write(
  c: CanvasRenderingContext2D,
  text: string,
  x: number,
  y: number,
  colour: string,
  align: CanvasTextAlign,
  weight = 400,
): void {
  c.font = `${weight} 13px ${CHART_FONT}`;
  c.fillStyle = colour;
  c.textAlign = align;
  c.fillText(text, x, y);
}
