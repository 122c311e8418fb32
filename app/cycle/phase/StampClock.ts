/** A step back of less is jitter; more is a counter that began again. */
const jitterS = 0.5;

/**
 * Turns a gauge's own stamps into seconds from its first one that never run back. A stamp that repeats or jitters back
 * is held at the latest. One that leaps, either way, is not believed until the next one bears it out: a damaged digit
 * is bridged by the usual spacing, a counter that began again goes on without a break, a leap ahead by more than 1.5 s
 * and twenty readings is time in which lines were lost.
 */
export class StampClock {
  /** Time of the latest reading; NaN before the first stamp. */
  lastS = Number.NaN;
  #offsetS = 0; // time = stamp + offset
  #stampS = 0; // the latest believed
  #spacingS = 0; // follows the spacing of readings slowly
  #doubtS = Number.NaN; // a stamp that awaits the next one's word
  #broken = false; // the next stamp may be any
  #places = 0; // since the first stamp
  #lostS = 0; // time in which lines were lost

  /** Takes the next stamp; true when lines were lost before it. */
  take(stampS: number): boolean {
    this.#places += 1;
    if (Number.isNaN(this.lastS)) this.#begin(stampS, 0);
    else if (this.#broken) this.#resume(stampS);
    else if (this.#follows(stampS - this.#stampS)) this.#advance(stampS);
    else if (this.#doubtS <= stampS && this.#follows(stampS - this.#doubtS)) return this.#believe(stampS);
    else {
      this.#doubtS = stampS;
      this.lastS += this.#spacingS;
    }
    return false;
  }

  /** A place in time came without a stamp. */
  miss(): void {
    if (this.#places > 0) this.#places += 1;
  }

  /** Places a second by the stamps; undefined before there are enough to tell. */
  get rateHz(): number | undefined {
    const span = this.lastS - this.#lostS;
    return this.#places >= 8 && span > 0 ? (this.#places - 1) / span : undefined;
  }

  /** The link was lost here. */
  break(): void {
    this.#broken = !Number.isNaN(this.lastS);
  }

  #follows(stepS: number): boolean {
    const most = this.#spacingS > 0 ? Math.max(1.5, 20 * this.#spacingS) : 60;
    return stepS > -jitterS && stepS <= most;
  }

  #begin(stampS: number, atS: number): void {
    this.#offsetS = atS - stampS;
    this.#stampS = stampS;
    this.lastS = atS;
    this.#doubtS = Number.NaN;
  }

  #advance(stampS: number): void {
    this.#doubtS = Number.NaN;
    const step = stampS - this.#stampS;
    if (step <= 0) return;
    this.#spacingS += (this.#spacingS === 0 ? 1 : 0.1) * (step - this.#spacingS);
    this.#stampS = stampS;
    this.lastS = Math.max(this.lastS, stampS + this.#offsetS);
  }

  /** Two stamps agree on the leap. */
  #believe(stampS: number): boolean {
    const ahead = this.#doubtS > this.#stampS;
    if (!ahead) this.#begin(this.#doubtS, this.lastS);
    const before = this.lastS;
    this.#begin(stampS, Math.max(this.lastS, stampS + this.#offsetS));
    if (ahead) this.#lostS += this.lastS - before - this.#spacingS;
    return ahead;
  }

  #resume(stampS: number): void {
    this.#broken = false;
    const before = this.lastS;
    if (stampS >= this.#stampS) this.#begin(stampS, Math.max(this.lastS, stampS + this.#offsetS));
    else this.#begin(stampS, this.lastS + this.#spacingS);
    this.#lostS += this.lastS - before - this.#spacingS;
  }
}
