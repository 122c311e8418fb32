import type { DateOrder } from "../../app/round/dump/DumpFormat.ts";
import { dateParts, parseDate } from "../../app/round/dump/parseStamp.ts";

const forms = new Map<string, Intl.DateTimeFormat>();

function formOf(locale: string): Intl.DateTimeFormat {
  let form = forms.get(locale);
  if (form === undefined) {
    form = new Intl.DateTimeFormat(locale, { day: "2-digit", month: "2-digit", year: "numeric", timeZone: "UTC" });
    forms.set(locale, form);
  }
  return form;
}

/** Whether a field for a day holds one of the calendar. */
export const isPlainDate = (text: string): boolean =>
  /^\d{4}-\d\d-\d\d$/.test(text) && parseDate(text, "ymd") !== undefined;

/** "2026-11-12" as it is typed in this locale: 12.11.2026, 12/11/2026, 11/12/2026. What is no plain date comes back as it is. */
export function typedDate(plainDate: string, locale: string): string {
  return isPlainDate(plainDate) ? formOf(locale).format(Date.parse(`${plainDate}T00:00:00Z`)) : plainDate;
}

/**
 * A date as people of this locale type it; with the year first it is read as ISO 8601 has it, wherever they are.
 * @returns  plain date; undefined where it is none, or none of the calendar
 */
export function readTypedDate(text: string, locale: string): string | undefined {
  const first = dateParts(text)?.[0];
  const ms = parseDate(text, first !== undefined && first > 31 ? "ymd" : orderOf(locale));
  return ms === undefined ? undefined : new Date(ms).toISOString().slice(0, 10);
}

/** How a date is typed, as a pattern: TT.MM.JJJJ. @param letters  of day, month and year: TMJ */
export function datePattern(locale: string, letters: string): string {
  const [day = "", month = "", year = ""] = letters;
  const places: Partial<Record<Intl.DateTimeFormatPartTypes, string>> = {
    day: day.repeat(2),
    month: month.repeat(2),
    year: year.repeat(4),
  };
  const parts = formOf(locale).formatToParts(0);
  return parts.map(({ type, value }) => places[type] ?? value).join("");
}

function orderOf(locale: string): DateOrder {
  const types = formOf(locale)
    .formatToParts(0)
    .map(({ type }) => type);
  if (types.indexOf("year") < types.indexOf("day")) return "ymd";
  return types.indexOf("day") < types.indexOf("month") ? "dmy" : "mdy";
}
