import type { EventName, Events, Push, ReadingsBatch } from "../../app/contract/events.ts";
import type { PageFeed } from "./PageFeed.ts";

/** Where the core says what happened; every page's feed hears it. Events are numbered here, once for all pages. */
export class PushHub {
  #seq = 0;
  readonly #feeds = new Set<PageFeed>();

  /** The number of the last event said. */
  get seq(): number {
    return this.#seq;
  }

  get pages(): number {
    return this.#feeds.size;
  }

  join(feed: PageFeed): () => void {
    this.#feeds.add(feed);
    return () => {
      this.#feeds.delete(feed);
      feed.close();
    };
  }

  say<E extends Exclude<EventName, "readings.arrived" | "page.joined">>(event: E, data: Events[E]): void {
    this.#seq += 1;
    const push: Push<E> = { seq: this.#seq, event, data };
    for (const feed of this.#feeds) feed.event(push as Push); // a Push of one event is a Push
  }

  readings(batch: ReadingsBatch): void {
    for (const feed of this.#feeds) feed.readings(this.#seq, batch);
  }
}
