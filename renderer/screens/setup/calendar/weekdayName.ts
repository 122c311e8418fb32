/** @param day  as ISO 8601 counts, 1 = Monday */
export function weekdayName(day: number, locale: string): string {
  // 1 January 2024 was a Monday.
  return new Intl.DateTimeFormat(locale, { weekday: "long", timeZone: "UTC" }).format(Date.UTC(2024, 0, day));
}
