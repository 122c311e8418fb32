import { dateIn } from "../store/dateIn.ts";
import { localDate } from "../store/localDate.ts";

/** The plain date an instant has where the works stand; where this computer stands when it does not know the zone. */
export function worksDay(ms: number, timeZone: string): string {
  return dateIn(timeZone, ms) ?? localDate(ms, -new Date(ms).getTimezoneOffset());
}
