import type { TimedStream } from "../../app/proof/reference/TimedStream.ts";
import { HostClock } from "./HostClock.ts";

/** What one batch of readings brings, as `GaugeStream` hands it out. */
type Batch = { readonly n: number; readonly forcesN: ArrayLike<number>; readonly timesS: ArrayLike<number> };

/** Readings older than this are let go: longer than any window that is looked at. */
const KEPT_S = 240;
/** Five milliseconds: two hundred readings a second are plenty for loads set by hand. */
const FINEST_S = 0.005;

/** The last minutes of one instrument, on the host's monotonic clock. The stream's own times give the intervals. */
export class StreamLog {
  #tS: number[] = [];
  #value: number[] = [];
  #clock = new HostClock();
  #some = nothing(0);
  /** When overload was last said, on the host's clock. */
  overloadAtS: number | undefined;

  push({ n, forcesN, timesS }: Batch, arrivedS: number): void {
    for (let i = 0; i < n; i += 1) {
      const value = forcesN[i]!;
      if (value === Number.POSITIVE_INFINITY) this.overloadAtS = arrivedS;
      if (!Number.isFinite(value)) continue;
      // Neither stamp nor rate: the arrival is all there is, kept rising within a burst.
      const own = Number.isFinite(timesS[i]!) ? timesS[i]! : Math.max(arrivedS, this.#lastS() + 1e-6);
      if (own <= this.#lastS()) continue; // a stamp that stands still or goes back tells no time
      this.#clock.note(own, arrivedS);
      this.#add(own, value);
    }
    this.#letGo();
  }

  /** The link was lost, or opened: what comes now has a time of its own. */
  clear(): void {
    this.#tS = [];
    this.#value = [];
    this.#clock = new HostClock();
    this.#some = nothing(0);
    this.overloadAtS = undefined;
  }

  get count(): number {
    return this.#tS.length;
  }

  get lastN(): number | undefined {
    return this.#value.at(-1);
  }

  /** Mean time between readings; undefined with fewer than two. */
  get intervalS(): number | undefined {
    const n = Math.min(this.#tS.length, 200);
    return n < 2 ? undefined : (this.#lastS() - this.#tS.at(-n)!) / (n - 1);
  }

  /** The last seconds, times on the host's clock. */
  tail(seconds: number): TimedStream {
    const fromS = this.#lastS() - seconds;
    let from = this.#tS.length;
    while (from > 0 && this.#tS[from - 1]! >= fromS) from -= 1;
    return { tS: this.#tS.slice(from).map((t) => this.#clock.hostS(t)), value: this.#value.slice(from) };
  }

  /** Readings that follow faster than `FINEST_S` are averaged: minutes of a fast gauge are looked at several times a second. */
  #add(ownS: number, value: number): void {
    if (this.#some.n > 0 && ownS - this.#some.fromS >= FINEST_S) {
      this.#tS.push(this.#some.tS);
      this.#value.push(this.#some.value);
      this.#some = nothing(ownS);
    }
    if (this.#some.n === 0 && ownS - this.#lastS() >= FINEST_S) {
      this.#tS.push(ownS);
      this.#value.push(value);
      return;
    }
    if (this.#some.n === 0) this.#some = nothing(ownS);
    const some = this.#some;
    some.n += 1;
    some.tS += (ownS - some.tS) / some.n;
    some.value += (value - some.value) / some.n;
  }

  #lastS(): number {
    return this.#tS.at(-1) ?? Number.NEGATIVE_INFINITY;
  }

  #letGo(): void {
    // Twice as much may pile up before the front is cut: cutting a little at each reading would cost more.
    if (this.#tS.length === 0 || this.#lastS() - this.#tS[0]! < 2 * KEPT_S) return;
    const from = this.#tS.findIndex((t) => t >= this.#lastS() - KEPT_S);
    this.#tS = this.#tS.slice(from);
    this.#value = this.#value.slice(from);
  }
}

/** A stretch of readings that are averaged. */
const nothing = (fromS: number) => ({ fromS, n: 0, tS: 0, value: 0 });
