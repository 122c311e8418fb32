import { type KeyboardEvent, type PointerEvent, type ReactNode, useId, useMemo, useState } from "react";
import { type Colours, coloursOf } from "../../../chart/colours.ts";
import { frameOf, pointAt } from "../../../chart/proof/PlotFrame.ts";
import type { PlotView } from "../../../chart/proof/PlotView.ts";
import { paintPlot } from "../../../chart/proof/paintPlot.ts";
import { plotDrawing } from "../../../chart/proof/plotDrawing.ts";
import { pictureName, saveDrawing } from "../../../chart/saveDrawing.ts";
import { useCanvas } from "../../../chart/useCanvas.ts";
import { Button } from "../../../ui/Button.tsx";
import { useTheme } from "../../../ui/theme/useTheme.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { plotTexts } from "./plotTexts.ts";
import "./plot.css";

/** A chart as its screen makes it: without colours and without what is picked out. */
export type Plot = Omit<PlotView, "colours" | "picked" | "number">;

/** A chart of a proof with its sentence, its table, and its files; each point says its figures under pointer and arrow keys. */
export function PlotFigure({
  plot,
  title,
  sentence,
  describe,
  table,
  fileName,
  day,
}: {
  readonly plot: Plot;
  readonly title: string;
  readonly sentence: string;
  readonly describe: (point: number) => string;
  readonly table: ReactNode;
  readonly fileName: string;
  /** For the file's name. */
  readonly day: string;
}) {
  const speech = useSpeech();
  const words = useWords(plotTexts);
  const colours = coloursOf(useTheme());
  const titleId = useId();
  const [picked, setPicked] = useState<number>();
  const [isTable, setIsTable] = useState(false);
  const viewIn = (on: Colours): PlotView => ({ ...plot, colours: on, picked, number: speech.number });
  const save = (kind: "png" | "svg") =>
    // A picture goes on paper: it is drawn on light.
    saveDrawing(
      kind,
      plotDrawing(viewIn(coloursOf("light")), { title: `${fileName} · ${title}`, about: sentence }),
      pictureName(`${fileName} ${title}`, day),
    );
  return (
    <figure className="sheet plot" aria-labelledby={titleId}>
      <div className="row head">
        <h3 id={titleId}>{title}</h3>
        <span className="row">
          <Button
            kind="quiet"
            aria-pressed={isTable}
            aria-label={words.tableOf(title)}
            onClick={() => setIsTable(!isTable)}
          >
            {words.asTable}
          </Button>
          <Button kind="quiet" icon="save" aria-label={words.savePng(title)} onClick={() => save("png")}>
            PNG
          </Button>
          <Button kind="quiet" icon="save" aria-label={words.saveSvg(title)} onClick={() => save("svg")}>
            SVG
          </Button>
        </span>
      </div>
      <p className="why">{sentence}</p>
      {isTable ? (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a stretch that scrolls is reached by the keys too
        <section className="sideways" aria-label={words.tableOf(title)} tabIndex={0}>
          {table}
        </section>
      ) : (
        <>
          <PlotCanvas
            view={viewIn(colours)}
            about={words.about(title, sentence, String(plot.points.length))}
            onPick={setPicked}
          />
          <p className="small picked" role="status">
            {picked === undefined || picked >= plot.points.length ? words.how : describe(picked)}
          </p>
        </>
      )}
    </figure>
  );
}

const never = () => () => {};

function PlotCanvas({
  view,
  about,
  onPick,
}: {
  readonly view: PlotView;
  readonly about: string;
  readonly onPick: (point: number | undefined) => void;
}) {
  const canvas = useCanvas((c, width, height) => paintPlot(c, view, width, height), never);
  // Arrows go as one reads, whatever the order the readings were taken in.
  const order = useMemo(
    () => [...view.points.keys()].sort((a, b) => view.points[a]!.x - view.points[b]!.x || a - b),
    [view.points],
  );
  const walk = (event: KeyboardEvent) => {
    const at = view.picked === undefined ? -1 : order.indexOf(view.picked);
    const to = new Map([
      ["ArrowRight", at + 1],
      ["ArrowLeft", at === -1 ? order.length - 1 : at - 1],
      ["Home", 0],
      ["End", order.length - 1],
    ]).get(event.key);
    if (event.key === "Escape") onPick(undefined);
    if (to === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    onPick(order[Math.max(0, Math.min(order.length - 1, to))]);
  };
  const hover = (event: PointerEvent<HTMLCanvasElement>) => {
    const { clientWidth, clientHeight } = event.currentTarget;
    const at = { x: event.nativeEvent.offsetX, y: event.nativeEvent.offsetY };
    onPick(pointAt(view, frameOf(view, clientWidth, clientHeight), at));
  };
  return (
    <div className="picture">
      <canvas
        ref={canvas}
        role="img"
        tabIndex={0}
        aria-label={about}
        onKeyDown={walk}
        onPointerMove={hover}
        onPointerDown={hover}
        onPointerLeave={() => onPick(undefined)}
        onBlur={() => onPick(undefined)}
      />
    </div>
  );
}
