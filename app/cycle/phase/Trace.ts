/** Places kept at most. At 10 kHz this is 26 s, in memory 2 MB (5 MB with stamps). */
export const traceLimit = 1 << 18;

/**
 * The readings in work, one a place of the stream: as indicated, NaN where a line was rejected, Infinity where the
 * gauge said overload. Bounded: rest is cut off in front, a long hold is folded (`skipped` places are missing before
 * `gapAt`). Members are open because the detector's inner loop reads them.
 */
export class Trace {
  values: Float64Array = new Float64Array(1024);
  times: Float64Array | undefined;
  /** 1 where the reading was a held maximum; made when the first one comes. */
  held: Uint8Array | undefined;
  length = 0;
  /** Place of `values[0]` in the stream. */
  firstPlace = 0;
  gapAt = 0;
  skipped = 0;
  rateHz: number | undefined;

  append(value: number, timeS: number): void {
    if (this.length === this.values.length) this.#grow();
    this.values[this.length] = value;
    if (this.times !== undefined) this.times[this.length] = timeS;
    else if (!Number.isNaN(timeS)) this.#startTimes(timeS); // the first stamp; comparing is cheaper than Number.isNaN
    this.length += 1;
  }

  /** Says of the reading just appended that it was a held maximum. */
  markHeld(): void {
    this.held ??= new Uint8Array(this.values.length);
    this.held[this.length - 1] = 1;
  }

  /** Forgets the first `count` places. */
  dropHead(count: number): void {
    if (count <= 0) return;
    this.values.copyWithin(0, count, this.length);
    this.times?.copyWithin(0, count, this.length);
    this.held?.copyWithin(0, count, this.length);
    this.held?.fill(0, this.length - count, this.length);
    this.firstPlace = this.placeOf(count);
    this.length -= count;
    if (count >= this.gapAt) this.skipped = 0;
    this.gapAt = Math.max(0, this.gapAt - count);
  }

  /** Leaves out the places from index `from` to before `to`. A trace has one such gap; it only grows. */
  fold(from: number, to: number): void {
    const count = to - from;
    if (count <= 0) return;
    const inside = this.skipped > 0 && this.gapAt > from && this.gapAt < to;
    if (this.skipped > 0 && !inside && this.gapAt !== from) throw new RangeError("a trace has one gap");
    this.values.copyWithin(from, to, this.length);
    this.times?.copyWithin(from, to, this.length);
    this.held?.copyWithin(from, to, this.length);
    this.length -= count;
    this.held?.fill(0, this.length, this.length + count);
    this.skipped += count;
    this.gapAt = from;
  }

  placeOf(index: number): number {
    return this.firstPlace + index + (this.skipped > 0 && index >= this.gapAt ? this.skipped : 0);
  }

  /** Seconds from the stream's first line; undefined when unknown. */
  timeOf(index: number): number | undefined {
    if (this.times !== undefined) return this.times[index];
    return this.rateHz === undefined ? undefined : this.placeOf(index) / this.rateHz;
  }

  get timed(): boolean {
    return this.times !== undefined || this.rateHz !== undefined;
  }

  /** Seconds between two places; NaN when unknown. */
  secondsBetween(from: number, to: number): number {
    return (this.timeOf(to) ?? Number.NaN) - (this.timeOf(from) ?? Number.NaN);
  }

  /** The first index at or after `from` that is `seconds` or more later; `length` when none is. Times must be known. */
  indexAfter(from: number, seconds: number): number {
    if (this.times === undefined) {
      // A hair of room, so that 1 s at 100 Hz is 100 places and not 101.
      const place = this.placeOf(from) + Math.ceil(seconds * this.rateHz! - 1e-6);
      const index = place - this.firstPlace;
      if (this.skipped === 0 || index < this.gapAt) return Math.min(index, this.length);
      return Math.min(Math.max(this.gapAt, index - this.skipped), this.length);
    }
    const target = this.times[from]! + seconds - 1e-9;
    let low = from;
    let high = this.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.times[middle]! < target) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  #grow(): void {
    const size = this.values.length * 2;
    this.values = larger(this.values, size);
    if (this.times !== undefined) this.times = larger(this.times, size);
    if (this.held !== undefined) {
      const held = new Uint8Array(size);
      held.set(this.held);
      this.held = held;
    }
  }

  /** Lines before the first stamp get its time: they are a header's or damaged ones. */
  #startTimes(timeS: number): void {
    this.times = new Float64Array(this.values.length).fill(timeS, 0, this.length + 1);
  }
}

function larger(array: Float64Array, size: number): Float64Array {
  const copy = new Float64Array(size);
  copy.set(array);
  return copy;
}
