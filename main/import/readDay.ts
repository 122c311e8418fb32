import type { ListFile } from "../../app/contract/importViews.ts";
import { instantOfSerial } from "./xlsx/cellText.ts";

export type DateOrder = NonNullable<ListFile["dateOrder"]>;

/** A wall clock's reading: plain date, and seconds into the day where they are told. */
export type Day = { readonly date: string; readonly timeS: number | undefined };

/** Day numbers that a workbook can mean as days of ours: from 1950 to 2173. A force in newtons may look the same. */
const SERIAL = /^\d{5}(?:\.\d+)?$/;

/**
 * A day as people write it: 2026-04-03, 3.4.2026, 3.4.26, 03/04/2026, each with a time of day behind it or without.
 * @param order  how slashes and dashes are read; with points the day comes first everywhere
 * @param from1904  what a bare day number counts from; undefined: the file is text, and such a number is no date
 * @returns  `undecided` where only the order would tell; undefined: no date
 */
export function readDay(text: string, order: DateOrder | undefined, from1904?: boolean): Day | "undecided" | undefined {
  if (from1904 !== undefined && SERIAL.test(text)) {
    const [date, time] = new Date(instantOfSerial(Number(text), from1904)).toISOString().slice(0, 19).split("T");
    return { date: date!, timeS: time === "00:00:00" ? undefined : readTime(time!) }; // an instant has both
  }
  const iso = /^(\d{4})[-/.](\d\d?)[-/.](\d\d?)(?:[T ,]+(.+))?$/.exec(text);
  if (iso !== null) return dayOf(iso[1]!, iso[2]!, iso[3]!, iso[4]);
  const parts = /^(\d\d?)([./-])(\d\d?)\2(\d{4}|\d\d)(?:[T ,]+(.+))?$/.exec(text);
  if (parts === null) return undefined;
  const [, first, mark, second, year, time] = parts as unknown as [string, string, string, string, string, string?]; // as the pattern has them
  const dayFirst = mark === "." ? true : orderOf(Number(first), Number(second), order);
  if (dayFirst === undefined) return "undecided";
  return dayFirst ? dayOf(year, second, first, time) : dayOf(year, first, second, time);
}

/** Which order a date with slashes or dashes itself tells; undefined: both fit, or it is no such date. */
export function orderToldBy(text: string): DateOrder | undefined {
  const [, first, second] = /^(\d\d?)[/-](\d\d?)[/-](?:\d{4}|\d\d)(?:\D.*)?$/.exec(text) ?? [];
  if (first === undefined) return undefined;
  if (Number(first) > 12) return "dayFirst";
  return Number(second) > 12 ? "monthFirst" : undefined;
}

/** Seconds into the day: 14:30, 14:30:05, 2:30 PM, 14.30 Uhr. */
export function readTime(text: string): number | undefined {
  const parts = /^(\d\d?)[:.](\d\d)(?:[:.](\d\d)(?:\.\d+)?)?\s*(?:(am|pm|a\.m\.|p\.m\.)|uhr|h)?$/i.exec(text.trim());
  if (parts === null) return undefined;
  const [hour, minute, second] = [Number(parts[1]), Number(parts[2]), Number(parts[3] ?? 0)];
  const half = parts[4]?.[0]?.toLowerCase();
  if (half !== undefined && !(hour >= 1 && hour <= 12)) return undefined;
  const of24 = half === undefined ? hour : (hour % 12) + (half === "p" ? 12 : 0);
  return of24 <= 23 && minute <= 59 && second <= 59 ? (of24 * 60 + minute) * 60 + second : undefined;
}

function orderOf(first: number, second: number, order: DateOrder | undefined): boolean | undefined {
  if (order !== undefined) return order === "dayFirst";
  if (first > 12) return true;
  if (second > 12) return false;
  return first === second ? true : undefined;
}

function dayOf(year: string, month: string, day: string, time: string | undefined): Day | undefined {
  // Two digits: this program was not there in 2070, and no such sheet in 1969.
  const full = year.length === 4 ? year : `${Number(year) >= 70 ? 19 : 20}${year}`;
  const date = `${full}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`;
  const ms = Date.parse(date);
  if (Number.isNaN(ms) || !new Date(ms).toISOString().startsWith(date)) return undefined;
  const timeS = time === undefined ? undefined : readTime(time);
  if (time !== undefined && timeS === undefined) return undefined;
  return { date, timeS };
}
