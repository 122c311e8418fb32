import { INK, type PdfSheet } from "./PdfSheet.ts";

/** Shapes that are told apart without colour, in the order they are used. */
export const markShapes = ["dots", "rings", "squares", "triangles", "crosses", "diamonds"] as const;
export type MarkShape = (typeof markShapes)[number];

const R = 2.3;

/** One mark about a place on the page. */
export function drawMark({ doc }: PdfSheet, shape: MarkShape, x: number, y: number): void {
  if (shape === "dots") {
    doc.circle(x, y, 2).fill(INK);
    return;
  }
  if (shape === "rings") doc.circle(x, y, R);
  if (shape === "squares") doc.rect(x - R, y - R, 2 * R, 2 * R);
  if (shape === "triangles")
    doc
      .moveTo(x, y - 1.2 * R)
      .lineTo(x + 1.1 * R, y + 0.8 * R)
      .lineTo(x - 1.1 * R, y + 0.8 * R)
      .closePath();
  if (shape === "diamonds")
    doc
      .moveTo(x, y - 1.3 * R)
      .lineTo(x + 1.3 * R, y)
      .lineTo(x, y + 1.3 * R)
      .lineTo(x - 1.3 * R, y)
      .closePath();
  if (shape === "crosses")
    doc
      .moveTo(x - R, y - R)
      .lineTo(x + R, y + R)
      .moveTo(x - R, y + R)
      .lineTo(x + R, y - R);
  doc.lineWidth(0.8).stroke(INK);
}

/** An upright bar with ends, for an interval. */
export function drawInterval({ doc }: PdfSheet, x: number, from: number, to: number): void {
  doc.moveTo(x, from).lineTo(x, to);
  for (const y of [from, to]) doc.moveTo(x - 2.5, y).lineTo(x + 2.5, y);
  doc.lineWidth(0.7).stroke(INK);
}
