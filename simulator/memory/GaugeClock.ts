/** What a gauge's own clock shows: local time without a zone, off by a start value and drifting (often wrong; common practice, no source). */
export class GaugeClock {
  #offsetMs: number;
  #sinceMs: number; // true time at which the offset held
  readonly #driftSPerDay: number;

  /**
   * @param offsetS  shown less true, seconds, at `sinceMs`
   * @param driftSPerDay  what it gains in a day
   */
  constructor(offsetS: number, driftSPerDay: number, sinceMs: number) {
    this.#offsetMs = offsetS * 1_000;
    this.#driftSPerDay = driftSPerDay;
    this.#sinceMs = sinceMs;
  }

  /** Milliseconds since 1970 as if the time it shows were UTC; whole seconds, as it shows no more. */
  shows(trueMs: number): number {
    const driftMs = ((trueMs - this.#sinceMs) / 86_400_000) * this.#driftSPerDay * 1_000;
    return Math.floor((trueMs + this.#offsetMs + driftMs) / 1_000) * 1_000;
  }

  /** Somebody changed the battery: it begins anew from a date of its own. */
  reset(trueMs: number, showsMs = Date.UTC(2020, 0, 1)): void {
    this.#offsetMs = showsMs - trueMs;
    this.#sinceMs = trueMs;
  }
}
