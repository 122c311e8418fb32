import { CHART_FONT } from "../colours.ts";
import type { Drawing } from "../saveDrawing.ts";
import type { PlotView } from "./PlotView.ts";
import { paintPlot } from "./paintPlot.ts";

const HEAD = 62;

/** A plot as a picture of its own, with its title and one sentence, for a report or a message. */
export function plotDrawing(view: PlotView, texts: { readonly title: string; readonly about: string }): Drawing {
  const [width, height] = [1200, 640];
  return {
    title: texts.title,
    width,
    height,
    paint: (c) => {
      c.fillStyle = view.colours.sheet;
      c.fillRect(0, 0, width, height);
      c.textAlign = "left";
      c.font = `600 20px ${CHART_FONT}`;
      c.fillStyle = view.colours.ink;
      c.fillText(texts.title, 24, 32);
      c.font = `400 13px ${CHART_FONT}`;
      c.fillStyle = view.colours.soft;
      c.fillText(texts.about, 24, 54);
      c.save();
      c.translate(0, HEAD);
      paintPlot(c, { ...view, picked: undefined }, width, height - HEAD);
      c.restore();
    },
  };
}
