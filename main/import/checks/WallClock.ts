const DAY_MS = 86_400_000;

/** Turns what a clock on the works' wall showed into an instant, by the rules of its time zone on that day. */
export class WallClock {
  readonly #format: Intl.DateTimeFormat | undefined;
  readonly #offsets = new Map<number, number>();

  constructor(timeZone: string) {
    this.#format = formatOf(timeZone);
  }

  /**
   * @param date  plain date
   * @param timeS  seconds into the day
   */
  instantOf(date: string, timeS: number): { readonly atMs: number; readonly offsetMinutes: number } {
    const wallMs = Date.parse(date) + timeS * 1_000;
    // The offset near by, then the one that holds there: an hour that a change of clocks leaves out is read by the later one.
    const near = this.#offset(wallMs);
    const offsetMinutes = this.#offset(wallMs - near * 60_000);
    return { atMs: wallMs - offsetMinutes * 60_000, offsetMinutes };
  }

  /** Minutes east of UTC at an instant; by this computer's own zone where it does not know the works'. */
  #offset(ms: number): number {
    const hour = Math.floor(ms / 3_600_000); // clocks change on the hour
    const known = this.#offsets.get(hour);
    if (known !== undefined) return known;
    const offset =
      this.#format === undefined ? 0 - new Date(ms).getTimezoneOffset() : wallMinutes(this.#format, hour) - hour * 60;
    this.#offsets.set(hour, offset);
    return offset;
  }
}

function formatOf(timeZone: string): Intl.DateTimeFormat | undefined {
  const parts = { year: "numeric", month: "numeric", day: "numeric", hour: "numeric", minute: "numeric" } as const;
  try {
    return new Intl.DateTimeFormat("en-US", { timeZone, hourCycle: "h23", ...parts });
  } catch {
    return undefined;
  }
}

/** The wall's reading at a full hour, as minutes of the UTC clock. */
function wallMinutes(format: Intl.DateTimeFormat, hour: number): number {
  const parts = new Map(format.formatToParts(hour * 3_600_000).map(({ type, value }) => [type, Number(value)]));
  const [year, month, day, hours, minutes] = (["year", "month", "day", "hour", "minute"] as const).map(
    (type) => parts.get(type) ?? 0,
  );
  return (Date.UTC(year!, month! - 1, day!) / DAY_MS) * 1_440 + hours! * 60 + minutes!; // five in, five out
}
