/** The calendar date an instant had there and then, as YYYY-MM-DD. */
export function localDate(ms: number, offsetMinutes: number): string {
  return new Date(ms + offsetMinutes * 60_000).toISOString().slice(0, 10);
}
