import { dateOf, daysOf } from "./plainDays.ts";
import type { WorksCalendar } from "./WorksCalendar.ts";

/** Looked back so far for an open day; works that are shut for longer have no such day. */
const FARTHEST = 366;

/** Whether the works are open on that plain date. */
export function isOpen(date: string, calendar: WorksCalendar): boolean {
  // 1970-01-01 was a Thursday, ISO weekday 4.
  const weekday = ((((daysOf(date) + 3) % 7) + 7) % 7) + 1;
  return calendar.weekdays.includes(weekday) && !calendar.closed.some(({ from, to }) => from <= date && date <= to);
}

/**
 * The last open day up to `date`: work that falls on a closed day is done before it, never after.
 * @param earliest  not before this day; when no day between is open, the first open one after `date`
 * @returns  `date` itself when the works are never open
 */
export function workingDay(date: string, calendar: WorksCalendar, earliest?: string): string {
  const day = daysOf(date);
  for (let back = 0; back <= FARTHEST; back += 1) {
    const tried = dateOf(day - back);
    if (earliest !== undefined && tried < earliest) break;
    if (isOpen(tried, calendar)) return tried;
  }
  for (let on = 1; on <= FARTHEST; on += 1) if (isOpen(dateOf(day + on), calendar)) return dateOf(day + on);
  return date;
}
