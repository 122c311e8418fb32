import type { Push, ReadingsBatch } from "../../app/contract/events.ts";
import { thin } from "./thin.ts";

/** At most twenty batches a second, and the next only when the page has drawn the last one. */
const LEAST_MS = 50;
/** A page that draws nothing for this long is let have one more batch: an acknowledgement may have been lost. */
const PATIENCE_MS = 2_000;
const COLUMNS = 500;

export type FeedTimers = {
  readonly now: () => number;
  readonly later: (run: () => void, ms: number) => () => void;
};

/**
 * What one page is sent. Events go at once and in order; readings go in batches with the page's acknowledgement as the
 * brake. What piles up meanwhile is thinned (first, last, least, greatest), never queued.
 */
export class PageFeed {
  readonly #send: (push: Push) => void;
  readonly #timers: FeedTimers;
  #waiting: ReadingsBatch | undefined;
  #seq = 0;
  #sentAtMs = Number.NEGATIVE_INFINITY;
  #unacknowledged = false;
  #cancel: (() => void) | undefined;

  constructor(send: (push: Push) => void, timers: FeedTimers) {
    this.#send = send;
    this.#timers = timers;
  }

  event(push: Push): void {
    this.#seq = push.seq;
    this.#send(push);
  }

  readings(seq: number, batch: ReadingsBatch): void {
    this.#seq = seq;
    this.#waiting = this.#waiting === undefined ? thinned(batch) : joined(this.#waiting, batch);
    this.#pump();
  }

  acknowledge(): void {
    this.#unacknowledged = false;
    this.#pump();
  }

  close(): void {
    this.#cancel?.();
    this.#waiting = undefined;
  }

  #pump(): void {
    this.#cancel?.();
    this.#cancel = undefined;
    if (this.#waiting === undefined) return;
    const since = this.#timers.now() - this.#sentAtMs;
    const due = this.#unacknowledged ? PATIENCE_MS : LEAST_MS;
    if (since < due) {
      this.#cancel = this.#timers.later(() => this.#pump(), due - since);
      return;
    }
    const data = this.#waiting;
    this.#waiting = undefined;
    this.#sentAtMs = this.#timers.now();
    this.#unacknowledged = true;
    this.#send({ seq: this.#seq, event: "readings.arrived", data });
  }
}

function thinned(batch: ReadingsBatch): ReadingsBatch {
  return { ...batch, ...thin(batch.t, batch.forceN, COLUMNS) };
}

/** A batch of another stream (times that start anew) takes the place of what waited. */
function joined(earlier: ReadingsBatch, later: ReadingsBatch): ReadingsBatch {
  const last = earlier.t.at(-1);
  const first = later.t[0];
  if (earlier.timed !== later.timed || (last !== undefined && first !== undefined && first < last))
    return thinned(later);
  return thinned({ ...later, t: [...earlier.t, ...later.t], forceN: [...earlier.forceN, ...later.forceN] });
}
