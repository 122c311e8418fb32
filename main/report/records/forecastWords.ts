import type { ForecastState } from "../../../app/trend/forecastLimit.ts";
import { reportTexts } from "./reportTexts.ts";
import type { Writing } from "./Writing.ts";

type Told = {
  readonly state: ForecastState;
  readonly atMs: number | undefined;
  readonly lowMs: number | undefined;
  readonly highMs: number | undefined;
};

/** When a limit is reached, as a sentence's end. @param confidence  of the interval, as a fraction */
export function forecastWords({ state, atMs, lowMs, highMs }: Told, write: Writing, confidence = 0.9): string {
  const words = reportTexts[write.language];
  if (state === "already") return words.already;
  if (state === "notWithinTenYears") return words.notWithinTenYears;
  if (state === "cannotTell" || atMs === undefined) return words.cannotTell;
  const from = lowMs === undefined ? "" : words.fromDay(write.day(lowMs));
  const to = highMs === undefined ? words.noEnd : words.toDay(write.day(highMs));
  return words.reached(write.day(atMs), write.percent(confidence, 0), from, to);
}
