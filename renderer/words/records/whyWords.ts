import type { SpindleRow } from "../../../app/contract/recordViews.ts";
import { inBoth } from "../inBoth.ts";
import type { Speech } from "../Speech.ts";

export const whyTexts = inBoth({
  neverMeasured: ["never measured", "nie gemessen"],
  stopStands: ["a stop stands", "ein Stopp steht"],
  belowMinimum: [
    (limit: string) => `below the minimum of ${limit}`,
    (limit: string) => `unter der Mindestkraft von ${limit}`,
  ],
  aboveMaximum: [
    (limit: string) => `above the maximum of ${limit}`,
    (limit: string) => `über der Höchstkraft von ${limit}`,
  ],
  nearLimit: ["too near a limit to tell", "zu nahe an einer Grenze"],
  noLimits: ["no limit, no baseline", "keine Grenze, kein Ausgangswert"],
  belowWarning: [
    (limit: string) => `below the warning limit of ${limit}`,
    (limit: string) => `unter der Warngrenze von ${limit}`,
  ],
  fell: [(share: string) => `${share} below baseline`, (share: string) => `${share} unter Ausgangswert`],
  rose: [(share: string) => `${share} above baseline`, (share: string) => `${share} über Ausgangswert`],
  level: ["level", "stabil"],
});

/** In a few words, why a spindle stands where it does: what decided its last verdict, else how far it is from its baseline. */
export function whyWords(row: SpindleRow, speech: Speech, unit: Parameters<Speech["force"]>[1]): string {
  const words = whyTexts[speech.language];
  const { last, spindle, stopped } = row;
  if (last === undefined) return words.neverMeasured;
  const { minimumN, warningN, maximumN } = spindle.limits;
  const { valueN, verdict, dropFromBaseline } = last;
  const limit = (forceN: number) => speech.force(forceN, unit, 100);
  const change = (share: number) => (share >= 0 ? words.fell : words.rose)(speech.percent(Math.abs(share)));
  if (verdict === "stop" && minimumN !== undefined) return words.belowMinimum(limit(minimumN));
  if (stopped) return words.stopStands;
  if (verdict === "cannotTell")
    return minimumN === undefined && row.baselineN === undefined ? words.noLimits : words.nearLimit;
  if (valueN !== undefined && maximumN !== undefined && valueN > maximumN) return words.aboveMaximum(limit(maximumN));
  if (verdict === "watch" && valueN !== undefined && warningN !== undefined && valueN < warningN) {
    return words.belowWarning(limit(warningN));
  }
  if (dropFromBaseline === undefined || Math.abs(dropFromBaseline) < 0.015) return words.level;
  return change(dropFromBaseline);
}
