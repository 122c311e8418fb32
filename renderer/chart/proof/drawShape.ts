import type { Pen } from "../Pen.ts";

/** How many series are told apart; more begin again with the first shape. */
export const SHAPES = 5;

/** The mark of a series: round, square, two triangles, diamond; full or open. */
export function drawShape(
  c: Pen,
  at: { readonly x: number; readonly y: number; readonly size: number },
  look: { readonly shape: number; readonly solid: boolean; readonly ink: string; readonly paper: string },
): void {
  const { x, y, size } = at;
  c.beginPath();
  if (look.shape % SHAPES === 0) c.arc(x, y, size * 0.95, 0, 7);
  else
    for (const [i, [dx, dy]] of corners[(look.shape % SHAPES) - 1]!.entries()) {
      if (i === 0) c.moveTo(x + dx * size, y + dy * size);
      else c.lineTo(x + dx * size, y + dy * size);
    }
  c.closePath();
  c.fillStyle = look.solid ? look.ink : look.paper;
  c.fill();
  c.strokeStyle = look.solid ? look.paper : look.ink;
  c.lineWidth = 1.6;
  c.lineJoin = "round";
  c.setLineDash([]);
  c.stroke();
}

const corners: readonly (readonly (readonly [number, number])[])[] = [
  [
    [-0.85, -0.85],
    [0.85, -0.85],
    [0.85, 0.85],
    [-0.85, 0.85],
  ],
  [
    [0, -1.15],
    [1.05, 0.8],
    [-1.05, 0.8],
  ],
  [
    [0, 1.15],
    [1.05, -0.8],
    [-1.05, -0.8],
  ],
  [
    [0, -1.2],
    [1.2, 0],
    [0, 1.2],
    [-1.2, 0],
  ],
];
