import { localDate } from "../store/localDate.ts";

/** The plain date an instant has where the works stand; where this computer stands when it does not know the zone. */
export function worksDay(ms: number, timeZone: string): string {
  try {
    const parts = new Intl.DateTimeFormat("en-CA", {
      timeZone,
      year: "numeric",
      month: "2-digit",
      day: "2-digit",
    }).formatToParts(ms);
    const part = (type: string) => parts.find((p) => p.type === type)?.value ?? "";
    return `${part("year")}-${part("month")}-${part("day")}`;
  } catch {
    return localDate(ms, -new Date(ms).getTimezoneOffset());
  }
}
