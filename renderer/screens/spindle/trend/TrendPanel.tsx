import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from "react";
import type { CheckRow, SpindlePage } from "../../../../app/contract/recordViews.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { coloursOf } from "../../../chart/colours.ts";
import { createTrendChart, type TrendChart } from "../../../chart/trend/createTrendChart.ts";
import { useCore, useProgram } from "../../../state/CoreContext.ts";
import { go } from "../../../state/routeStore.ts";
import { useTheme } from "../../../ui/theme/useTheme.ts";
import { VerdictWord } from "../../../ui/verdict/VerdictWord.tsx";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { spindleTexts } from "../texts.ts";
import { useToolNames } from "../useToolNames.ts";
import { SegmentTable } from "./SegmentTable.tsx";
import { trendTexts } from "./trendTexts.ts";
import { trendViewOf } from "./trendViewOf.ts";
import { useTrendWords } from "./useTrendWords.ts";
import "./trend.css";

/** The course of one spindle: marks, robust line, cone, services; each check is reached by pointer and by arrow keys. */
export function TrendPanel({ page, unit }: { readonly page: SpindlePage; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(trendTexts);
  const pageWords = useWords(spindleTexts);
  const chartWords = useTrendWords();
  const colours = coloursOf(useTheme());
  const rows = useAllRows(page);
  const worksRule = useProgram((state) => state.works?.rule);
  const [picked, setPicked] = useState<number>();
  const view = useMemo(
    () => trendViewOf(page, rows, { unit, colours, speech, words: chartWords, nowMs: Date.now(), worksRule }),
    [page, rows, unit, colours, speech, chartWords, worksRule],
  );
  const marks = view?.marks ?? [];
  const open = (mark: number | undefined) => {
    const check = mark === undefined ? undefined : marks[mark];
    if (check !== undefined) go({ place: "spindle", spindleId: page.row.spindle.spindleId, checkId: check.checkId });
  };
  const canvas = useTrendCanvas(view && { ...view, picked }, (mark, pressed) => {
    setPicked(mark);
    if (pressed) open(mark);
  });
  if (view === undefined) return <p className="sheet note">{pageWords.noChecks}</p>;

  const keys = (event: KeyboardEvent) => {
    const to: Record<string, number> = {
      ArrowLeft: (picked ?? marks.length) - 1,
      ArrowRight: (picked ?? -1) + 1,
      Home: 0,
      End: marks.length - 1,
    };
    const next = to[event.key];
    if (next !== undefined) {
      event.preventDefault();
      setPicked(Math.max(0, Math.min(marks.length - 1, next)));
    } else if (event.key === "Enter") open(picked);
    else if (event.key === "Escape") setPicked(undefined);
  };
  const row = picked === undefined ? undefined : rows.find((one) => one.checkId === marks[picked]?.checkId);
  return (
    <section className="sheet trend">
      <div className="picture">
        <canvas
          ref={canvas}
          tabIndex={0}
          role="img"
          aria-label={words.about(marks.length)}
          onKeyDown={keys}
          onBlur={() => setPicked(undefined)}
        />
      </div>
      <div className="picked" role="status">
        {row === undefined ? <small>{words.how}</small> : <Picked row={row} unit={unit} />}
      </div>
      <SegmentTable page={page} unit={unit} />
    </section>
  );
}

function Picked({ row, unit }: { readonly row: CheckRow; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const tools = useToolNames();
  const value = row.valueN === undefined ? "–" : speech.forceWithin(row.valueN, row.expandedN, unit);
  const change = row.dropFromBaseline === undefined ? undefined : speech.percent(-row.dropFromBaseline, 1);
  return (
    <span className="row">
      <b>{speech.date(row.measuredAtMs)}</b>
      <span>{value}</span>
      <VerdictWord verdict={row.verdict} />
      <small>
        {[change, tools.gauge(row.gaugeId), tools.adapter(row.adapterId)]
          .filter((part) => part !== undefined)
          .join(" · ")}
      </small>
    </span>
  );
}

const MOST_ROWS = 500;

/** The rows behind the trend's points: those of the page, and earlier ones where the trend reaches farther back. */
function useAllRows(page: SpindlePage): readonly CheckRow[] {
  const core = useCore();
  const [earlier, setEarlier] = useState<readonly CheckRow[]>([]);
  const { spindleId } = page.row.spindle;
  const missing = page.moreChecks ? page.checks.at(-1)?.checkId : undefined;
  useEffect(() => {
    let gone = false;
    setEarlier([]);
    if (missing === undefined) return;
    core.client.call("checks.list", { spindleId, after: missing, limit: MOST_ROWS }).then((answer) => {
      if (answer.ok && !gone) setEarlier(answer.value.rows);
    });
    return () => {
      gone = true;
    };
  }, [core, spindleId, missing]);
  return useMemo(() => (earlier.length === 0 ? page.checks : [...page.checks, ...earlier]), [page.checks, earlier]);
}

type View = Parameters<TrendChart["show"]>[0];

/** One chart for the panel's life; a new view only changes its data. */
function useTrendCanvas(view: View | undefined, onPick: (mark: number | undefined, pressed: boolean) => void) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const chart = useRef<TrendChart>(undefined);
  const pick = useRef(onPick);
  useEffect(() => {
    pick.current = onPick;
  });
  useEffect(() => {
    const element = canvas.current;
    if (view === undefined || element === null) return;
    if (chart.current === undefined) {
      if (element.getContext("2d") === null) return;
      chart.current = createTrendChart(element, view, (mark, pressed) => pick.current(mark, pressed));
    } else chart.current.show(view);
  }, [view]);
  useEffect(
    () => () => {
      chart.current?.destroy();
      chart.current = undefined;
    },
    [],
  );
  return canvas;
}
