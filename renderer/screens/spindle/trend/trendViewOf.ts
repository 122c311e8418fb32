import type { CheckRow, SpindlePage } from "../../../../app/contract/recordViews.ts";
import { type ForceUnit, newtonsPerUnit } from "../../../../app/quantity/forceUnits.ts";
import { counterPlace } from "../../../../app/trend/trendAxis.ts";
import { type GuardZone, guardZones } from "../../../../app/verdict/guardZones.ts";
import type { DecisionRule } from "../../../../app/verdict/Judgement.ts";
import type { Colours } from "../../../chart/colours.ts";
import { niceTicks } from "../../../chart/niceTicks.ts";
import type { TrendEvent, TrendView } from "../../../chart/trend/TrendView.ts";
import { timeTicks } from "../../../chart/trend/timeTicks.ts";
import type { Stretch } from "../../../chart/trend/zoom.ts";
import type { Speech } from "../../../words/Speech.ts";

const DAY_MS = 86_400_000;
/** How far ahead the chart reaches at most, as a share of what has been seen. */
const MOST_AHEAD = 0.6;
const LEAST_FOR_LINE = 4;
const MOST_TOOL_WORDS = 4;

export type TrendWords = TrendView["words"] & {
  readonly service: (kind: string) => string;
  readonly step: (share: string) => string;
  readonly stepWithin: (share: string, low: string, high: string) => string;
  readonly tool: (name: string) => string;
  readonly counts: (n: string) => string;
  readonly reach: (when: string) => string;
  readonly reachMinimum: (when: string) => string;
  readonly between: (low: string, high: string) => string;
  readonly from: (low: string) => string;
};

/** The page's trend as the chart draws it. @returns undefined without a check to show */
export function trendViewOf(
  page: SpindlePage,
  rows: readonly CheckRow[],
  shown: {
    readonly unit: ForceUnit;
    readonly colours: Colours;
    readonly speech: Speech;
    readonly words: TrendWords;
    readonly nowMs: number;
    readonly worksRule: DecisionRule | undefined;
    /** Name of the gauge or adapter of a check; undefined where it is not known. */
    readonly toolName: (check: CheckRow | undefined, which: "gauge" | "adapter") => string | undefined;
    /** Undefined: the whole history with what is foretold. */
    readonly stretch: Stretch | undefined;
  },
): Omit<TrendView, "picked"> | undefined {
  const { trend, row } = page;
  const first = trend.points[0];
  const last = trend.points.at(-1);
  if (first === undefined || last === undefined) return undefined;
  const { unit, colours, speech, words, nowMs } = shown;
  const { axis } = trend;
  const byId = new Map(rows.map((one) => [one.checkId, one]));
  const todayX = axis.kind === "date" ? (nowMs - axis.originMs) / DAY_MS : undefined;

  const marks = trend.points.map((point) => {
    const check = byId.get(point.checkId);
    return {
      checkId: point.checkId,
      x: point.x,
      valueN: point.valueN,
      expandedN: check?.expandedN,
      verdict: check?.verdict,
      isBaseline: check?.isBaseline ?? false,
      toolChanged: point.gaugeChanged || point.adapterChanged,
    };
  });
  // Through fewer checks a line can be drawn, but it says nothing: its band would fill the chart.
  const lines = trend.segments
    .filter(({ n }) => n >= LEAST_FOR_LINE)
    .map(({ band, lastX }) => ({ points: band, lastX }));

  const crossing = trend.forecasts.find(({ state }) => state === "crosses");
  const seen = Math.max(last.x, todayX ?? last.x) - first.x || 1;
  const wantedEnd = Math.max(last.x, todayX ?? last.x, crossing?.high ?? crossing?.at ?? 0);
  const end = Math.min(wantedEnd, Math.max(last.x, todayX ?? last.x) + seen * MOST_AHEAD) + seen * 0.04;
  const whole = { from: first.x - seen * 0.03, to: end };
  const { from: minX, to: maxX } = shown.stretch ?? whole;
  const toolChanges = trend.points.filter(
    ({ x, gaugeChanged, adapterChanged }) => (gaugeChanged || adapterChanged) && x >= minX && x <= maxX,
  );

  const events: TrendEvent[] = [
    ...page.events.flatMap((event) => {
      const atMs = Date.parse(`${event.at}T12:00:00Z`);
      if (axis.kind === "counter")
        return event.counter === undefined
          ? []
          : [
              {
                x: counterPlace(axis.restarts, atMs, event.counter),
                label: words.service(event.kind),
                kind: "service" as const,
              },
            ];
      return [
        {
          x: (atMs - axis.originMs) / DAY_MS,
          label: words.service(event.kind),
          kind: "service" as const,
        },
      ];
    }),
    ...trend.steps
      .filter((step) => step.clear)
      .map((step) => ({ x: step.x, label: stepLabel(step, speech, words), kind: "step" as const })),
    // More of them would write over each other; the two strokes under the mark say it then.
    ...(toolChanges.length > MOST_TOOL_WORDS ? [] : toolChanges).map((point) => {
      const check = byId.get(point.checkId);
      const names = [
        point.gaugeChanged ? shown.toolName(check, "gauge") : undefined,
        point.adapterChanged ? shown.toolName(check, "adapter") : undefined,
      ].filter((name) => name !== undefined);
      return { x: point.x, label: words.tool(names.join(" · ")), kind: "tool" as const };
    }),
  ].sort((a, b) => a.x - b.x);

  const { minN, maxN } = forcesShown(
    shown.stretch === undefined ? marks : marks.filter(({ x }) => x >= minX && x <= maxX),
    shown.stretch === undefined ? row : undefined,
  );

  return {
    marks,
    lines,
    events,
    limits: row.spindle.limits,
    zones: zonesOf(row, shown.worksRule),
    baselineN: row.baselineN,
    todayX,
    reach: reachOf(crossing, speech, words, axis.kind === "date"),
    whole,
    minX,
    maxX,
    minN,
    maxN,
    ticks:
      axis.kind === "date" ? dateTicks(axis.originMs, minX, maxX, speech.locale) : counterTicks(minX, maxX, speech),
    unitN: newtonsPerUnit[unit],
    number: speech.number,
    words,
    colours,
  };
}

/** Forces the picture has room for: with limits and baseline where the whole is shown, near the checks where a part is. */
function forcesShown(
  marks: TrendView["marks"],
  row: SpindlePage["row"] | undefined,
): { readonly minN: number; readonly maxN: number } {
  const levels = row === undefined ? [] : [row.spindle.limits.minimumN, row.spindle.limits.warningN, row.baselineN];
  const all = [
    ...marks.flatMap(({ valueN, expandedN = 0 }) => [valueN - expandedN, valueN + expandedN]),
    ...levels.filter((n) => n !== undefined && n !== null),
  ];
  if (all.length === 0) return { minN: 0, maxN: 1 };
  const highest = Math.max(...all);
  const lowest = Math.min(...all);
  const room = Math.max(highest - lowest, highest * 0.02);
  return { minN: Math.max(0, lowest - room * 0.22), maxN: highest + room * 0.16 };
}

/** "step −4.2 % (−5.1 to −3.3 %)": with the sign, a fall is another matter than a rise. */
function stepLabel(step: SpindlePage["trend"]["steps"][number], speech: Speech, words: TrendWords): string {
  const share = speech.percent(step.share, 1);
  const { lowN, highN } = step;
  if (typeof lowN !== "number" || typeof highN !== "number") return words.step(share);
  const before = step.sizeN / step.share;
  return words.stepWithin(share, speech.number((lowN / before) * 100, 1), speech.percent(highN / before, 1));
}

function zonesOf({ spindle, last }: SpindlePage["row"], worksRule: DecisionRule | undefined): readonly GuardZone[] {
  const rule = spindle.rule ?? worksRule;
  const standardUncertaintyN = last?.standardUncertaintyN;
  if (rule === undefined || standardUncertaintyN === undefined || standardUncertaintyN === null) return [];
  return guardZones(spindle.limits, { rule, standardUncertaintyN });
}

type Crossing = SpindlePage["trend"]["forecasts"][number] | undefined;

function reachOf(crossing: Crossing, speech: Speech, words: TrendWords, byDate: boolean): TrendView["reach"] {
  if (crossing === undefined || typeof crossing.low !== "number") return undefined;
  const { lowMs, highMs, low, high } = crossing;
  if (byDate && typeof lowMs !== "number") return undefined;
  const said = byDate
    ? [speech.month(lowMs!), typeof highMs === "number" ? speech.month(highMs) : undefined] // just seen to be there
    : [words.counts(speech.number(low)), typeof high === "number" ? words.counts(speech.number(high)) : undefined];
  const [from = "", to] = said;
  const when = to === undefined ? words.from(from) : words.between(from, to);
  return { low, high, label: (crossing.which === "warning" ? words.reach : words.reachMinimum)(when) };
}

function dateTicks(originMs: number, minX: number, maxX: number, locale: string): TrendView["ticks"] {
  return timeTicks(originMs + minX * DAY_MS, originMs + maxX * DAY_MS, 7, locale).map(({ ms, label }) => ({
    x: (ms - originMs) / DAY_MS,
    label,
  }));
}

function counterTicks(minX: number, maxX: number, speech: Speech): TrendView["ticks"] {
  return niceTicks(Math.max(0, minX), maxX, 6).values.map((x) => ({ x, label: speech.number(x) }));
}
