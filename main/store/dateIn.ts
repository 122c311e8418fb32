import { localDate } from "./localDate.ts";

const formats = new Map<string, Intl.DateTimeFormat | undefined>();

/** The plain date an instant has in a time zone, as YYYY-MM-DD; undefined when this computer does not know the zone. */
export function dateIn(timeZone: string, ms: number): string | undefined {
  const local = localMs(timeZone, ms);
  return local === undefined ? undefined : localDate(local, 0);
}

/**
 * The instant a plain date begins in a time zone. Where the clocks skip midnight that is the first instant that has
 * the date; where this computer does not know the zone, midnight in UTC.
 * @param date  YYYY-MM-DD
 */
export function dayStart(timeZone: string | undefined, date: string): number {
  const utc = Date.parse(date);
  if (timeZone === undefined) return utc;
  const starts = [utc - DAY_MS, utc + DAY_MS].map((at) => utc - offsetMs(timeZone, at)).sort((a, b) => a - b);
  return starts.find((at) => dateIn(timeZone, at) === date) ?? utc;
}

const DAY_MS = 86_400_000;

function offsetMs(timeZone: string, ms: number): number {
  return (localMs(timeZone, ms) ?? ms) - ms;
}

/** What the clock on the wall shows, written as if it were UTC; whole seconds. */
function localMs(timeZone: string, ms: number): number | undefined {
  const format = formatOf(timeZone);
  if (format === undefined) return undefined;
  const parts = format.formatToParts(ms);
  const part = (type: string) => Number(parts.find((p) => p.type === type)?.value);
  const second = Math.floor(ms / 1000) * 1000;
  return (
    Date.UTC(part("year"), part("month") - 1, part("day"), part("hour"), part("minute"), part("second")) + (ms - second)
  );
}

/** A format is costly to make, and a fleet asks thousands of times. */
function formatOf(timeZone: string): Intl.DateTimeFormat | undefined {
  if (!formats.has(timeZone)) formats.set(timeZone, newFormat(timeZone));
  return formats.get(timeZone);
}

function newFormat(timeZone: string): Intl.DateTimeFormat | undefined {
  const two = "2-digit";
  try {
    return new Intl.DateTimeFormat("en-u-ca-iso8601", {
      timeZone,
      hourCycle: "h23",
      year: "numeric",
      month: two,
      day: two,
      hour: two,
      minute: two,
      second: two,
    });
  } catch {
    return undefined;
  }
}
