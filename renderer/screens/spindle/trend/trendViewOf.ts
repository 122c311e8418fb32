import type { CheckRow, SpindlePage } from "../../../../app/contract/recordViews.ts";
import { type ForceUnit, newtonsPerUnit } from "../../../../app/quantity/forceUnits.ts";
import { type GuardZone, guardZones } from "../../../../app/verdict/guardZones.ts";
import type { DecisionRule } from "../../../../app/verdict/Judgement.ts";
import type { Colours } from "../../../chart/colours.ts";
import { niceTicks } from "../../../chart/niceTicks.ts";
import type { TrendEvent, TrendView } from "../../../chart/trend/TrendView.ts";
import { timeTicks } from "../../../chart/trend/timeTicks.ts";
import type { Speech } from "../../../words/Speech.ts";

const DAY_MS = 86_400_000;
/** How far ahead the chart reaches at most, as a share of what has been seen. */
const MOST_AHEAD = 0.6;
const LEAST_FOR_LINE = 4;

export type TrendWords = TrendView["words"] & {
  readonly service: (kind: string) => string;
  readonly step: (share: string) => string;
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
  const maxX = Math.min(wantedEnd, Math.max(last.x, todayX ?? last.x) + seen * MOST_AHEAD) + seen * 0.04;
  const minX = first.x - seen * 0.03;

  const events: TrendEvent[] = [
    ...page.events.flatMap((event) => {
      if (axis.kind === "counter")
        return event.counter === undefined
          ? []
          : [{ x: event.counter, label: words.service(event.kind), kind: "service" as const }];
      return [
        {
          x: (Date.parse(`${event.at}T12:00:00Z`) - axis.originMs) / DAY_MS,
          label: words.service(event.kind),
          kind: "service" as const,
        },
      ];
    }),
    ...trend.steps
      .filter((step) => step.clear)
      .map((step) => ({ x: step.x, label: words.step(speech.percent(Math.abs(step.share))), kind: "step" as const })),
  ].sort((a, b) => a.x - b.x);

  const within = marks.flatMap(({ valueN, expandedN = 0 }) => [valueN - expandedN, valueN + expandedN]);
  const { minimumN, warningN } = row.spindle.limits;
  const lowest = Math.min(...within, ...[minimumN, warningN].filter((n) => n !== undefined));
  const highest = Math.max(...within, row.baselineN ?? 0);
  const room = Math.max(highest - lowest, highest * 0.02);

  return {
    marks,
    lines,
    events,
    limits: row.spindle.limits,
    zones: zonesOf(row, shown.worksRule),
    baselineN: row.baselineN,
    todayX,
    reach: reachOf(crossing, speech, words, axis.kind === "date"),
    minX,
    maxX,
    minN: Math.max(0, lowest - room * 0.22),
    maxN: highest + room * 0.16,
    ticks:
      axis.kind === "date" ? dateTicks(axis.originMs, minX, maxX, speech.locale) : counterTicks(minX, maxX, speech),
    unitN: newtonsPerUnit[unit],
    number: speech.number,
    words,
    colours,
  };
}

function zonesOf({ spindle, last }: SpindlePage["row"], worksRule: DecisionRule | undefined): readonly GuardZone[] {
  const rule = spindle.rule ?? worksRule;
  const standardUncertaintyN = last?.standardUncertaintyN;
  if (rule === undefined || standardUncertaintyN === undefined || standardUncertaintyN === null) return [];
  return guardZones(spindle.limits, { rule, standardUncertaintyN });
}

type Crossing = SpindlePage["trend"]["forecasts"][number] | undefined;

function reachOf(crossing: Crossing, speech: Speech, words: TrendWords, byDate: boolean): TrendView["reach"] {
  if (crossing === undefined || crossing.low === undefined || !byDate || crossing.lowMs === undefined) return undefined;
  const low = speech.month(crossing.lowMs);
  const when = crossing.highMs === undefined ? words.from(low) : words.between(low, speech.month(crossing.highMs));
  return {
    low: crossing.low,
    high: crossing.high,
    label: (crossing.which === "warning" ? words.reach : words.reachMinimum)(when),
  };
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
