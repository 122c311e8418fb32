import type { DateOrder } from "./DumpFormat.ts";

/** Two digits of a year mean this century. */
const CENTURY = 2000;

export type DateParts = readonly [first: number, second: number, third: number];

/** The three numbers of a date in any of the usual ways of writing: 2026-03-02, 02.03.26, 3/2/2026, 20260302. */
export function dateParts(text: string): DateParts | undefined {
  const marked = /^\s*(\d{1,4})([-./])(\d{1,2})\2(\d{1,4})\.?\s*$/.exec(text);
  if (marked !== null) return [Number(marked[1]), Number(marked[3]), Number(marked[4])];
  const run = /^\s*(\d{4})(\d\d)(\d\d)\s*$/.exec(text);
  return run === null ? undefined : [Number(run[1]), Number(run[2]), Number(run[3])];
}

/**
 * A date as ms at its midnight, as if in UTC.
 * @returns  undefined: no date, or none of the calendar (31.02.)
 */
export function parseDate(text: string, order: DateOrder): number | undefined {
  const parts = dateParts(text);
  if (parts === undefined) return undefined;
  const [a, b, c] = parts;
  const [year, month, day] = order === "ymd" ? [a, b, c] : order === "dmy" ? [c, b, a] : [c, a, b];
  const full = year < 100 ? CENTURY + year : year;
  if (full < 1900 || full > 2200) return undefined;
  const ms = Date.UTC(full, month - 1, day);
  const back = new Date(ms);
  // Date.UTC rolls a day that does not exist over into the next month.
  return back.getUTCMonth() === month - 1 && back.getUTCDate() === day ? ms : undefined;
}

/**
 * A time of day as ms: 8:05, 08:05:30, 08:05:30.5, 8:05 PM. 24:00 is the end of the day (ISO 8601-1:2019/Amd 1:2022,
 * from memory); later than that is none.
 */
export function parseTime(text: string): number | undefined {
  const found = /^\s*(\d{1,2}):(\d\d)(?::(\d\d)(?:[.,](\d{1,3})\d*)?)?\s*([AaPp])?\.?(?:[Mm]\.?)?Z?\s*$/.exec(text);
  if (found === null) return undefined;
  const [, hourText, minuteText, secondText = "0", fraction = "", half] = found;
  const [hour, minute, second] = [Number(hourText), Number(minuteText), Number(secondText)];
  if (minute > 59 || second > 59 || hour > 24 || (half !== undefined && (hour < 1 || hour > 12))) return undefined;
  const ms = Number(fraction.padEnd(3, "0"));
  if (hour === 24 && minute + second + ms > 0) return undefined;
  const hours = half === undefined ? hour : (hour % 12) + (half.toLowerCase() === "p" ? 12 : 0);
  return ((hours * 60 + minute) * 60 + second) * 1000 + ms;
}

/** Date and time in one cell, with a T, a comma or blanks between; a date alone is its midnight. */
export function parseStamp(text: string, order: DateOrder): number | undefined {
  const [dateText, timeText] = splitStamp(text) ?? [text, undefined];
  const date = parseDate(dateText, order);
  const time = timeText === undefined ? 0 : parseTime(timeText);
  return date === undefined || time === undefined ? undefined : date + time;
}

/** The two texts of a cell that holds date and time. */
export function splitStamp(text: string): readonly [string, string] | undefined {
  const found = /^\s*(\d[\d./-]{5,9})(?:T|,?\s+)(\d{1,2}:.+)$/.exec(text);
  return found === null ? undefined : [found[1]!, found[2]!];
}
