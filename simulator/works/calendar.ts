import type { Random } from "../physics/Random.ts";

const DAY_MS = 86_400_000;

/** One walk through a hall: how many days before the end it was. */
export type RoundDay = { readonly area: string; readonly ageDays: number };

/** Plain date so many days before `endMs`; negative counts ahead. */
export function dateAgo(endMs: number, days: number): string {
  return new Date(endMs - days * DAY_MS).toISOString().slice(0, 10);
}

/** Rounds of a hall about every three months, on working days, the last one so many days before the end. */
export function roundsOf(
  area: string,
  lastAgeDays: number,
  historyDays: number,
  endMs: number,
  random: Random,
): readonly RoundDay[] {
  const rounds: RoundDay[] = [];
  for (let age = lastAgeDays; age < historyDays; age += 91 + random.below(11) - 5) {
    rounds.push({ area, ageDays: toWorkingDay(endMs, age) });
  }
  return rounds.reverse();
}

/** The same day, or the Friday before. */
export function toWorkingDay(endMs: number, ageDays: number): number {
  const weekday = new Date(endMs - ageDays * DAY_MS).getUTCDay();
  return ageDays + (weekday === 6 ? 1 : weekday === 0 ? 2 : 0);
}

/** Instant of a time of day at the works (central European time) so many days before the end, and the offset there and then. */
export function instantAgo(
  endMs: number,
  ageDays: number,
  minuteOfDay: number,
): { readonly atMs: number; readonly offsetMinutes: number } {
  const midnight = Math.floor((endMs - ageDays * DAY_MS) / DAY_MS) * DAY_MS;
  const offsetMinutes = isSummer(midnight) ? 120 : 60;
  return { atMs: midnight + (minuteOfDay - offsetMinutes) * 60_000, offsetMinutes };
}

/** Summer time in the European Union: last Sunday of March to last Sunday of October (Directive 2000/84/EC). */
function isSummer(ms: number): boolean {
  const year = new Date(ms).getUTCFullYear();
  return ms >= lastSunday(year, 2) && ms < lastSunday(year, 9);
}

function lastSunday(year: number, month: number): number {
  const last = new Date(Date.UTC(year, month + 1, 0));
  return last.getTime() - last.getUTCDay() * DAY_MS;
}
