import type { SpindlePage } from "../../../app/contract/recordViews.ts";
import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import { verdictTexts } from "../../../app/words/verdictTexts.ts";
import { capital } from "../../words/capital.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { spindleTexts } from "./texts.ts";

/** The one sentence a colleague would say of this spindle, with its figures and how sure they are. */
export function SpindleSentence({ page, unit }: { readonly page: SpindlePage; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(spindleTexts);
  const verdictWords = useWords(verdictTexts);
  const { row, trend } = page;
  const { last, baselineN } = row;
  if (last === undefined || last === null) return <p className="why">{words.neverMeasured}</p>;
  const value = last.valueN === undefined ? "–" : speech.forceWithin(last.valueN, last.expandedN, unit);
  const baseline = baselineN === undefined ? undefined : speech.force(baselineN, unit);
  const drop = last.dropFromBaseline;

  const level = () => {
    if (baseline === undefined || drop === undefined) return words.plainValue(value);
    if (Math.abs(drop) < 0.01) return words.holds(value, baseline);
    return (drop > 0 ? words.isBelow : words.isAbove)(value, speech.percent(Math.abs(drop)), baseline);
  };
  const ahead = () => {
    const told = trend.forecasts.filter(({ state }) => state === "crosses" || state === "already");
    // The nearest limit that is still ahead; else the one already reached.
    const reached = told.find(({ which, state }) => which === "minimum" && state === "already");
    const next = reached ?? told.find(({ state }) => state === "crosses") ?? told[0];
    if (next === undefined) {
      if (trend.forecasts.length === 0) return "";
      return trend.forecasts.some(({ state }) => state === "cannotTell") ? words.cannotForecast : words.notSoon;
    }
    const limit = next.which === "warning" ? words.theWarning : words.theMinimum;
    if (next.state === "already") return words.already(limit);
    const month = (ms: number | undefined) => (ms === undefined ? undefined : speech.month(ms));
    const [low, high, at] = [month(next.lowMs), month(next.highMs), month(next.atMs)];
    if (low !== undefined && high !== undefined && low !== high) return words.reaches(limit, words.between(low, high));
    if (low !== undefined && high === undefined) return words.reaches(limit, words.notBefore(low));
    const when = at ?? low;
    return when === undefined ? words.cannotForecast : words.reaches(limit, words.about(when));
  };
  // Where a stop stands the notice under this says what holds.
  const due =
    page.due == null || page.due.why === "stopped"
      ? ""
      : (page.due.overdueDays > 0 ? words.overdueSince : words.measureBy)(speech.plainDate(page.due.dueOn));
  return (
    <p className="why">
      <b>{capital(verdictWords[last.verdict], speech)}.</b>{" "}
      {[level(), ahead(), due].filter((part) => part !== "").join(" ")}
    </p>
  );
}
