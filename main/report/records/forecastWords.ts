import type { ForecastState } from "../../../app/trend/forecastLimit.ts";

type Told = {
  readonly state: ForecastState;
  readonly atMs: number | undefined;
  readonly lowMs: number | undefined;
  readonly highMs: number | undefined;
};

/** When a limit is reached, as a sentence's end. @param confidence  of the interval, as a fraction */
export function forecastWords({ state, atMs, lowMs, highMs }: Told, confidence = 0.9): string {
  if (state === "already") return "reached already, or passed";
  if (state === "notWithinTenYears") return "not within ten years as things go";
  if (state === "cannotTell" || atMs === undefined) return "cannot be told from these checks";
  const from = lowMs === undefined ? "" : ` from ${day(lowMs)}`;
  const to = highMs === undefined ? ", with no end to be named" : ` to ${day(highMs)}`;
  return `about ${day(atMs)} (${(100 * confidence).toFixed(0)} %:${from}${to})`;
}

export const day = (ms: number): string => new Date(ms).toISOString().slice(0, 10);
