import type { Clock } from "./Clock.ts";

export type RequesterOptions = {
  readonly request: Uint8Array;
  readonly everyMs: number;
  readonly timeoutMs: number;
  readonly write: (bytes: Uint8Array) => Promise<void>;
  /** So many requests in a row had no answer. */
  readonly onUnanswered: (inARow: number) => void;
};

/** Asks a gauge that sends on request only: the next time after its period, when it has answered or its time is out. */
export class Requester {
  readonly #clock: Clock;
  readonly #options: RequesterOptions;
  #cancel: (() => void) | undefined;
  #askedMs = 0;
  #waits = false;
  #unanswered = 0;
  #stopped = false;

  constructor(clock: Clock, options: RequesterOptions) {
    this.#clock = clock;
    this.#options = options;
    this.#ask();
  }

  /** Bytes have come. */
  heard(): void {
    if (!this.#waits) return;
    this.#waits = false;
    this.#unanswered = 0;
    this.#cancel?.();
    const restMs = this.#askedMs + this.#options.everyMs - this.#clock.monotonicMs();
    this.#cancel = this.#clock.after(Math.max(0, restMs), () => this.#ask());
  }

  stop(): void {
    this.#stopped = true;
    this.#cancel?.();
  }

  #ask(): void {
    if (this.#stopped) return;
    this.#askedMs = this.#clock.monotonicMs();
    this.#waits = true;
    const { timeoutMs, everyMs, request, write } = this.#options;
    this.#cancel = this.#clock.after(Math.max(timeoutMs, everyMs), () => {
      this.#waits = false;
      this.#unanswered += 1;
      this.#options.onUnanswered(this.#unanswered);
      this.#ask();
    });
    write(request).catch(() => {}); // a port that cannot be written to says so itself, or by its silence
  }
}
