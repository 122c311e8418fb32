import type { SpindlePage } from "../../../../app/contract/recordViews.ts";
import { type ForceUnit, fromNewtons } from "../../../../app/quantity/forceUnits.ts";
import type { Speech } from "../../../words/Speech.ts";
import { unitText } from "../../../words/Speech.ts";
import { statisticsTexts } from "./statisticsTexts.ts";

const DAYS_A_YEAR = 365.25;

/** The sentences about one spindle's own figures; a list is empty where it has none. */
export function statisticsHere(
  page: SpindlePage,
  unit: ForceUnit,
  speech: Speech,
): { slope?: string[]; kendall?: string[]; forecast?: string[]; guard?: string[] } {
  const words = statisticsTexts[speech.language];
  const { trend, row } = page;
  const segment = trend.segments.at(-1);
  const line = trend.axis.kind === "date" ? segment?.line : undefined;
  const aYear = (slope: number) => `${speech.number(fromNewtons(slope * DAYS_A_YEAR, unit), 2)} ${unitText(unit)}`;
  const p = segment?.memory.p;
  const odds = (value: number) => (value < 0.001 ? `< ${speech.number(0.001, 3)}` : `= ${speech.number(value, 3)}`);
  const { last, spindle } = row;
  const { minimumN } = spindle.limits;
  return {
    slope:
      segment === undefined || typeof line?.low !== "number" || typeof line.high !== "number"
        ? []
        : [words.slopeHere(speech.number(segment.n), aYear(line.slope), aYear(line.low), aYear(line.high))],
    kendall:
      segment === undefined || typeof p !== "number"
        ? []
        : [words.kendallHere(speech.number(segment.mannKendall.s), odds(p))],
    forecast: trend.forecasts.map((forecast) => forecastHere(forecast, speech)),
    guard:
      typeof last?.valueN !== "number" || minimumN === undefined
        ? []
        : [words.guardHere(speech.forceWithin(last.valueN, last.expandedN, unit), speech.force(minimumN, unit))],
  };
}

function forecastHere(forecast: SpindlePage["trend"]["forecasts"][number], speech: Speech): string {
  const words = statisticsTexts[speech.language];
  const limit = words[forecast.which];
  if (forecast.state !== "crosses") return words[`forecast.${forecast.state}`](limit);
  const { lowMs, highMs } = forecast;
  if (typeof lowMs !== "number") return words["forecast.cannotTell"](limit);
  return typeof highMs === "number"
    ? words.forecastHere(limit, speech.month(lowMs), speech.month(highMs))
    : words.forecastOpen(limit, speech.month(lowMs));
}
