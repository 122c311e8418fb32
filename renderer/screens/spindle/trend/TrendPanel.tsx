import { type KeyboardEvent, useMemo, useState } from "react";
import type { CheckRow, SpindlePage } from "../../../../app/contract/recordViews.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { coloursOf } from "../../../chart/colours.ts";
import { pictureName } from "../../../chart/saveDrawing.ts";
import { savePicture } from "../../../chart/trend/savePicture.ts";
import { bringInSight, type Stretch, zoomAbout } from "../../../chart/trend/zoom.ts";
import { useProgram } from "../../../state/CoreContext.ts";
import { go } from "../../../state/routeStore.ts";
import { useTheme } from "../../../ui/theme/useTheme.ts";
import { unitText } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { localToday } from "../localToday.ts";
import { spindleTexts } from "../texts.ts";
import { useToolNames } from "../useToolNames.ts";
import { Picked } from "./Picked.tsx";
import { SegmentTable } from "./SegmentTable.tsx";
import { TrendTable } from "./TrendTable.tsx";
import { type Axis, TrendTools } from "./TrendTools.tsx";
import { trendTexts } from "./trendTexts.ts";
import { trendViewOf } from "./trendViewOf.ts";
import { useAllRows } from "./useAllRows.ts";
import { useCounterPage } from "./useCounterPage.ts";
import { useTrendCanvas } from "./useTrendCanvas.ts";
import { useTrendWords } from "./useTrendWords.ts";
import "./trend.css";

type Props = { readonly page: SpindlePage; readonly unit: ForceUnit };

/** The course of one spindle, by date or by tool changes. */
export function TrendPanel({ page, unit }: Props) {
  const words = useWords(spindleTexts);
  const [axis, setAxis] = useState<Axis>("date");
  const byCounter = useCounterPage(page, axis === "counter");
  if (page.trend.points.length === 0) return <p className="sheet note">{words.noChecks}</p>;
  const shown = axis === "counter" ? (byCounter ?? page) : page;
  // Another axis is another picture: zoom and what was picked mean nothing there.
  return <Course key={shown.trend.axis.kind} page={shown} unit={unit} axis={axis} onAxis={setAxis} />;
}

/** Marks, robust line, cone, services; each check is reached by pointer and by arrow keys. */
function Course({ page, unit, axis, onAxis }: Props & { readonly axis: Axis; readonly onAxis: (axis: Axis) => void }) {
  const words = useWords(trendTexts);
  const speech = useSpeech();
  const rows = useAllRows(page);
  const [picked, setPicked] = useState<number>();
  const [stretch, setStretch] = useState<Stretch>();
  const [isTable, setIsTable] = useState(false);
  const { view, viewFor } = useTrendView(page, rows, unit, stretch);
  const marks = view?.marks ?? [];
  const open = (mark: number | undefined) => {
    const check = mark === undefined ? undefined : marks[mark];
    if (check !== undefined) go({ place: "spindle", spindleId: page.row.spindle.spindleId, checkId: check.checkId });
  };
  const { canvas, pointer, chosen } = useTrendCanvas(view && !isTable ? { ...view, picked } : undefined, {
    pick: (mark, pressed) => {
      setPicked(mark);
      if (pressed) open(mark);
    },
    stretch: setStretch,
  });
  if (view === undefined) return <p className="sheet note">{words.noCounter}</p>;

  const now = { from: view.minX, to: view.maxX };
  const zoom = (factor: number | undefined) => {
    const at = picked === undefined ? (now.from + now.to) / 2 : marks[picked]!.x;
    setStretch(factor === undefined ? undefined : zoomAbout(now, at, factor, view.whole));
  };
  const walk = (to: number) => {
    const mark = Math.max(0, Math.min(marks.length - 1, to));
    setPicked(mark);
    if (stretch !== undefined) setStretch(bringInSight(stretch, marks[mark]!.x, view.whole));
  };
  const acts = new Map<string, () => void>([
    ["ArrowLeft", () => walk((picked ?? marks.length) - 1)],
    ["ArrowRight", () => walk((picked ?? -1) + 1)],
    ["Home", () => walk(0)],
    ["End", () => walk(marks.length - 1)],
    ["Enter", () => open(picked)],
    ["Escape", () => setPicked(undefined)],
    ["+", () => zoom(0.5)],
    ["-", () => zoom(2)],
    ["0", () => zoom(undefined)],
  ]);
  const keys = (event: KeyboardEvent) => {
    const act = event.ctrlKey || event.metaKey || event.altKey ? undefined : acts.get(event.key);
    if (act === undefined) return;
    event.preventDefault();
    act();
  };
  const placeOf = (x: number) =>
    page.trend.axis.kind === "date"
      ? speech.date(page.trend.axis.originMs + x * 86_400_000)
      : words.counts(speech.number(Math.max(0, x)));
  const [from, to] = [placeOf(now.from), placeOf(now.to)];
  const save = (kind: "png" | "svg") => {
    const { name, taper } = page.row.spindle;
    const inSight = marks.filter(({ x }) => x >= now.from && x <= now.to).length;
    const texts = {
      title: taper === "" ? name : `${name} · ${taper}`,
      about: words.pictureAbout(inSight, from, to),
      unit: unitText(unit),
    };
    // A picture goes on paper: it is drawn on light.
    savePicture(kind, { ...viewFor("light"), picked: undefined }, texts, pictureName(name, localToday()));
  };
  const row = picked === undefined ? undefined : rows.find((one) => one.checkId === marks[picked]?.checkId);
  return (
    <section className="sheet trend" aria-label={words.tools}>
      <TrendTools
        axis={axis}
        onAxis={onAxis}
        hasCounter={axis === "counter" || page.details.filter(({ counter }) => typeof counter === "number").length > 1}
        isTable={isTable}
        onTable={() => setIsTable(!isTable)}
        isZoomed={stretch !== undefined}
        onZoom={zoom}
        onSave={save}
      />
      {isTable ? (
        <TrendTable page={page} view={view} unit={unit} />
      ) : (
        <>
          <div className="picture">
            <canvas
              ref={canvas}
              {...pointer}
              tabIndex={0}
              role="img"
              aria-label={words.about(marks.length, from, to)}
              onKeyDown={keys}
              onBlur={() => setPicked(undefined)}
            />
            {chosen !== undefined && <span className="chosen" style={chosen} />}
          </div>
          <div className="picked" role="status">
            {row !== undefined ? (
              <Picked
                row={row}
                point={page.trend.points.find((point) => point.checkId === row.checkId)}
                detail={page.details.find((detail) => detail.checkId === row.checkId)}
                unit={unit}
              />
            ) : (
              <small>{stretch === undefined ? words.how : words.shownOf(from, to)}</small>
            )}
          </div>
        </>
      )}
      <SegmentTable page={page} unit={unit} />
    </section>
  );
}

function useTrendView(page: SpindlePage, rows: readonly CheckRow[], unit: ForceUnit, stretch: Stretch | undefined) {
  const speech = useSpeech();
  const words = useTrendWords();
  const theme = useTheme();
  const { gauge, adapter } = useToolNames();
  const worksRule = useProgram((state) => state.works?.rule);
  return useMemo(() => {
    const toolName = (check: CheckRow | undefined, which: "gauge" | "adapter") =>
      which === "gauge" ? gauge(check?.gaugeId) : adapter(check?.adapterId);
    const make = (on: "light" | "dark") =>
      trendViewOf(page, rows, {
        unit,
        colours: coloursOf(on),
        speech,
        words,
        nowMs: Date.now(),
        worksRule,
        toolName,
        stretch,
      });
    return { view: make(theme), viewFor: (on: "light" | "dark") => make(on)! }; // asked for only where there is a view
  }, [page, rows, unit, stretch, speech, words, theme, worksRule, gauge, adapter]);
}
