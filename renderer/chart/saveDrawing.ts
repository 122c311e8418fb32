import type { Pen } from "./Pen.ts";
import { SvgPen } from "./SvgPen.ts";

/** A picture for a report or a message: what it shows, and how large it is. */
export type Drawing = {
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly paint: (pen: Pen) => void;
};

/** Twice the points of the screen: sharp on paper too. */
const SHARP = 2;

/** The drawing as the text of an SVG file, by the same functions as on the screen. */
export function svgOf(drawing: Drawing, measure: (text: string, font: string) => number): string {
  const pen = new SvgPen(measure);
  drawing.paint(pen);
  return pen.document(drawing.width, drawing.height, drawing.title);
}

/** Gives the reader the drawing as a file. */
export async function saveDrawing(kind: "png" | "svg", drawing: Drawing, name: string): Promise<void> {
  const canvas = document.createElement("canvas");
  const c = canvas.getContext("2d");
  if (c === null) return;
  if (kind === "svg") {
    const measure = (text: string, font: string) => {
      c.font = font;
      return c.measureText(text).width;
    };
    handOver(new Blob([svgOf(drawing, measure)], { type: "image/svg+xml" }), `${name}.svg`);
    return;
  }
  canvas.width = drawing.width * SHARP;
  canvas.height = drawing.height * SHARP;
  c.scale(SHARP, SHARP);
  drawing.paint(c);
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, "image/png"));
  if (blob !== null) handOver(blob, `${name}.png`);
}

function handOver(blob: Blob, name: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000); // the download reads it after the click
}

/** A file's name from a thing's: what a file system refuses becomes a dash. */
export function pictureName(thing: string, day: string): string {
  return `${thing.replace(/[^\p{L}\p{N}.]+/gu, "-").replace(/^[-.]+|-+$/g, "") || "picture"}-${day}`;
}
