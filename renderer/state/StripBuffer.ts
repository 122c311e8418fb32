import type { ReadingsBatch } from "../../app/contract/events.ts";

/** Four readings stay of each stretch this long: far finer than a pixel of the strip, far coarser than a fast gauge. */
const GRAIN_S = 0.008;

/**
 * The live readings that the strip chart can show, in the order they came: a ring of fixed size, so hours of measuring
 * need no more memory than minutes. Of a fast stream each stretch of `GRAIN_S` keeps its first, least, greatest and last
 * reading, so no peak is lost. Samples stay out of React: charts subscribe here.
 */
export class StripBuffer {
  readonly t: Float64Array;
  readonly forceN: Float64Array;
  /** Seconds when true; reading numbers when no rate is known. */
  timed = true;
  /** Ids of the cycles that closed in the stream that is shown; those of an earlier stream have other times. */
  readonly cycles = new Set<string>();
  #head = 0; // next place to write
  #count = 0;
  readonly #stretch = { index: Number.NaN, kept: 0, first: [0, 0], least: [0, 0], greatest: [0, 0], last: [0, 0] };
  readonly #listeners = new Set<() => void>();

  constructor(capacity: number) {
    if (!(capacity >= 4)) throw new RangeError(`StripBuffer needs room for four readings, got ${capacity}`);
    this.t = new Float64Array(capacity);
    this.forceN = new Float64Array(capacity);
  }

  get count(): number {
    return this.#count;
  }

  /** Place of the i-th oldest reading in `t` and `forceN`. */
  at(i: number): number {
    const size = this.t.length;
    return (this.#head - this.#count + i + size) % size;
  }

  get lastT(): number | undefined {
    return this.#count === 0 ? undefined : this.t[this.at(this.#count - 1)];
  }

  push(batch: Pick<ReadingsBatch, "t" | "forceN" | "timed">): void {
    const first = batch.t[0];
    const last = this.lastT;
    // Times that go back mean another stream: what was drawn belongs to the one before.
    if (batch.timed !== this.timed || (first !== undefined && last !== undefined && first < last)) this.#empty();
    this.timed = batch.timed;
    for (let i = 0; i < batch.t.length; i += 1) this.#add(batch.t[i]!, batch.forceN[i]!);
    this.#tell();
  }

  clear(): void {
    this.#empty();
    this.#tell();
  }

  /** Hears of every batch; answers its undo. */
  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  #add(t: number, forceN: number): void {
    const s = this.#stretch;
    const index = Math.floor(t / GRAIN_S);
    const reading = [t, forceN];
    if (!this.timed || index !== s.index) {
      Object.assign(s, { index, kept: 0, first: reading, least: reading, greatest: reading, last: reading });
      this.#write(reading);
      s.kept = 1;
      return;
    }
    if (forceN < s.least[1]!) s.least = reading;
    if (forceN > s.greatest[1]!) s.greatest = reading;
    s.last = reading;
    // The stretch in work is written anew: at most four places, so the cost a reading does not grow.
    this.#unwrite(s.kept);
    const kept = [...new Set([s.first, s.least, s.greatest, s.last])].sort((a, b) => a[0]! - b[0]!);
    for (const one of kept) this.#write(one);
    s.kept = kept.length;
  }

  #write(reading: readonly number[]): void {
    this.t[this.#head] = reading[0]!;
    this.forceN[this.#head] = reading[1]!;
    this.#head = (this.#head + 1) % this.t.length;
    if (this.#count < this.t.length) this.#count += 1;
  }

  #unwrite(places: number): void {
    this.#head = (this.#head - places + this.t.length) % this.t.length;
    this.#count -= places;
  }

  #empty(): void {
    this.#head = 0;
    this.#count = 0;
    this.#stretch.index = Number.NaN;
    this.cycles.clear();
  }

  #tell(): void {
    for (const listener of this.#listeners) listener();
  }
}
