import { type Drawing, saveDrawing, svgOf } from "../saveDrawing.ts";
import { PICTURE, paintPicture } from "./paintPicture.ts";
import type { TrendView } from "./TrendView.ts";

type Texts = Parameters<typeof paintPicture>[2];

const drawingOf = (view: TrendView, texts: Texts): Drawing => ({
  ...PICTURE,
  title: texts.title,
  paint: (pen) => paintPicture(pen, view, texts),
});

/** The trend as the text of an SVG file. */
export const trendSvg = (view: TrendView, texts: Texts, measure: (text: string, font: string) => number): string =>
  svgOf(drawingOf(view, texts), measure);

/** Gives the reader the trend as a file. */
export const savePicture = (kind: "png" | "svg", view: TrendView, texts: Texts, name: string): Promise<void> =>
  saveDrawing(kind, drawingOf(view, texts), name);
