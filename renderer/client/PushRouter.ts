import type { EventName, Events, Push } from "../../app/contract/events.ts";

type Listener = (data: never) => void;

/** More than this held back while a snapshot is on its way: the oldest go, and the hole they leave asks for another one. */
const MOST_HELD = 1_000;

/**
 * Hands each push to who listens for its event and watches the numbers. Events are numbered one by one; a batch of readings
 * carries the number of the event before it. Whatever does not follow on means that something was missed: then
 * events are held back until a snapshot has told where we are, so that no older state covers a newer one.
 */
export class PushRouter {
  readonly #listeners = new Map<string, Set<Listener>>();
  readonly #missed: () => void;
  #last = 0;
  #held: Push[] | undefined = [];

  constructor(missed: () => void) {
    this.#missed = missed;
  }

  on<E extends EventName>(event: E, listener: (data: Events[E]) => void): () => void {
    const heard = this.#listeners.get(event) ?? new Set();
    this.#listeners.set(event, heard);
    heard.add(listener as Listener); // called with this event's data only
    return () => heard.delete(listener as Listener);
  }

  /** The snapshot just applied holds everything up to here. */
  caughtUp(seq: number): void {
    const held = this.#held ?? [];
    this.#last = seq;
    this.#held = undefined;
    for (const push of held) this.take(push);
  }

  take(push: Push): void {
    if (push.event === "page.joined") {
      this.#hold();
      return;
    }
    if (push.event === "readings.arrived") {
      if (this.#held === undefined && push.seq > this.#last) this.#hold();
      this.#hand(push);
      return;
    }
    if (this.#held === undefined && push.seq > this.#last + 1) this.#hold();
    if (this.#held !== undefined) {
      this.#held.push(push);
      if (this.#held.length > MOST_HELD) this.#held.shift();
      return;
    }
    if (push.seq <= this.#last) return; // the snapshot was newer
    this.#last = push.seq;
    this.#hand(push);
  }

  #hold(): void {
    this.#held = [];
    this.#missed();
  }

  #hand(push: Push): void {
    for (const listener of this.#listeners.get(push.event) ?? []) listener(push.data as never); // paired by `on`
  }
}
