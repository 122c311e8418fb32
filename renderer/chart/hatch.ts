import type { Pen } from "./Pen.ts";

/** Slanting lines over a rectangle: what lies there is neither one side nor the other. */
export function hatch(
  c: Pen,
  box: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number },
  colour: string,
): void {
  const { left, right, top, bottom } = box;
  if (bottom <= top || right <= left) return;
  const height = bottom - top;
  c.save();
  c.beginPath();
  c.rect(left, top, right - left, height);
  c.clip();
  c.strokeStyle = colour;
  c.lineWidth = 1;
  c.globalAlpha = 0.5;
  c.beginPath();
  for (let x = left - height; x < right; x += GAP) {
    c.moveTo(x, bottom);
    c.lineTo(x + height, top);
  }
  c.stroke();
  c.restore();
}

const GAP = 7;
