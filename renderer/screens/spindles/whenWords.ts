import type { FleetPlace } from "../../../app/trend/rankFleet.ts";
import type { Speech } from "../../words/Speech.ts";
import type { spindlesTexts } from "./texts.ts";

type WhenWords = Pick<
  (typeof spindlesTexts)["en"],
  "whenNow" | "whenNotSoon" | "whenCannotTell" | "whenFrom" | "whenBetween" | "whenIn"
>;

/** When a limit is reached, in words: the interval, never a single day. */
export function whenWords(forecast: FleetPlace["forecast"], words: WhenWords, speech: Speech, nowMs: number): string {
  if (forecast.state === "already") return words.whenNow;
  if (forecast.state === "notWithinTenYears") return words.whenNotSoon;
  if (forecast.state === "cannotTell") return words.whenCannotTell;
  const { lowMs, highMs, atMs } = forecast;
  const month = (ms: number) => (ms <= nowMs ? words.whenNow : speech.month(ms));
  if (lowMs === undefined) return atMs === undefined ? words.whenCannotTell : words.whenIn(month(atMs));
  if (highMs === undefined) return words.whenFrom(month(lowMs));
  const [low, high] = [month(lowMs), month(highMs)];
  return low === high ? words.whenIn(low) : words.whenBetween(low, high);
}
