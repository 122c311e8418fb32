const DAY_MS = 86_400_000;

/**
 * Marks for an axis of dates: starts of years, half years, quarters, months, or days where it is that near, so many that about `wanted` lie in the span.
 * @returns  instants and what to write at them; UTC, since a day more or less is no matter on years
 */
export function timeTicks(
  fromMs: number,
  toMs: number,
  wanted: number,
  locale: string,
): readonly { readonly ms: number; readonly label: string }[] {
  const months = (toMs - fromMs) / (30.44 * DAY_MS) / Math.max(1, wanted);
  if (months < 0.6) return dayTicks(fromMs, toMs, months * 30.44, locale);
  const step = [1, 3, 6, 12, 24, 60, 120].find((one) => one >= months) ?? 120;
  const year = new Intl.DateTimeFormat(locale, { year: "numeric", timeZone: "UTC" });
  const month = new Intl.DateTimeFormat(locale, { month: "short", timeZone: "UTC" });
  const first = new Date(fromMs);
  const ticks: { ms: number; label: string }[] = [];
  let at = Math.ceil((first.getUTCFullYear() * 12 + first.getUTCMonth()) / step) * step;
  for (;;) {
    const ms = Date.UTC(Math.floor(at / 12), at % 12, 1);
    if (ms > toMs) return ticks;
    if (ms >= fromMs) ticks.push({ ms, label: at % 12 === 0 ? year.format(ms) : month.format(ms) });
    at += step;
  }
}

function dayTicks(fromMs: number, toMs: number, wantedDays: number, locale: string): ReturnType<typeof timeTicks> {
  const step = DAY_MS * ([1, 2, 7].find((one) => one >= wantedDays) ?? 14);
  const day = new Intl.DateTimeFormat(locale, { day: "numeric", month: "short", timeZone: "UTC" });
  const ticks: { ms: number; label: string }[] = [];
  for (let ms = Math.ceil(fromMs / step) * step; ms <= toMs; ms += step) ticks.push({ ms, label: day.format(ms) });
  return ticks;
}
