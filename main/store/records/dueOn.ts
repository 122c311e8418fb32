import { localDate } from "../localDate.ts";

const formats = new Map<string, Intl.DateTimeFormat>();

/**
 * When the next routine check is due: the last one's date in the works' time zone and so many days.
 * @param last  undefined: never measured
 * @returns  YYYY-MM-DD; undefined without a last check or an interval
 */
export function dueOn(
  last: { readonly measuredAtMs: number; readonly offsetMinutes: number } | undefined,
  intervalDays: number | undefined,
  timeZone: string | undefined,
): string | undefined {
  if (last === undefined || intervalDays === undefined) return undefined;
  const day = timeZone === undefined ? undefined : dateIn(timeZone, last.measuredAtMs);
  const from = day ?? localDate(last.measuredAtMs, last.offsetMinutes);
  return localDate(Date.parse(from) + intervalDays * 86_400_000, 0);
}

/** The date an instant has in a time zone; undefined when this computer does not know the zone. */
function dateIn(timeZone: string, ms: number): string | undefined {
  let format = formats.get(timeZone);
  try {
    format ??= new Intl.DateTimeFormat("en-CA", { timeZone, year: "numeric", month: "2-digit", day: "2-digit" });
  } catch {
    return undefined;
  }
  formats.set(timeZone, format);
  const part = (type: string) => format.formatToParts(ms).find((p) => p.type === type)?.value ?? "";
  return `${part("year")}-${part("month")}-${part("day")}`;
}
