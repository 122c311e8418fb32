import { SvgPen } from "../SvgPen.ts";
import { PICTURE, paintPicture } from "./paintPicture.ts";
import type { TrendView } from "./TrendView.ts";

type Texts = Parameters<typeof paintPicture>[2];
/** Twice the points of the screen: sharp on paper too. */
const SHARP = 2;

/** The trend as the text of an SVG file, drawn by the same functions as on the screen. */
export function trendSvg(view: TrendView, texts: Texts, measure: (text: string, font: string) => number): string {
  const pen = new SvgPen(measure);
  paintPicture(pen, view, texts);
  return pen.document(PICTURE.width, PICTURE.height, texts.title);
}

/** Gives the reader the trend as a file. */
export async function savePicture(kind: "png" | "svg", view: TrendView, texts: Texts, name: string): Promise<void> {
  const canvas = document.createElement("canvas");
  const c = canvas.getContext("2d");
  if (c === null) return;
  if (kind === "svg") {
    const measure = (text: string, font: string) => {
      c.font = font;
      return c.measureText(text).width;
    };
    handOver(new Blob([trendSvg(view, texts, measure)], { type: "image/svg+xml" }), `${name}.svg`);
    return;
  }
  canvas.width = PICTURE.width * SHARP;
  canvas.height = PICTURE.height * SHARP;
  c.scale(SHARP, SHARP);
  paintPicture(c, view, texts);
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

/** A file's name from a spindle's: what a file system refuses becomes a dash. */
export function pictureName(spindle: string, day: string): string {
  return `${spindle.replace(/[^\p{L}\p{N}.]+/gu, "-").replace(/^[-.]+|-+$/g, "") || "spindle"}-${day}`;
}
