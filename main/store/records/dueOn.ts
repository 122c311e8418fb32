import { dateIn } from "../dateIn.ts";
import { localDate } from "../localDate.ts";

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
