import type { Clock } from "./Clock.ts";

/**
 * Notices that no byte has come for so long. A timer that fires late shows that this program itself was held up;
 * bytes may then lie unread in the system, so it looks once more before it says anything.
 */
export class SilenceWatch {
  /** When the last byte came, by the monotonic clock. */
  lastMs: number;
  silent = false;
  readonly #clock: Clock;
  readonly #afterMs: number;
  readonly #onSilent: () => void;
  #cancel: (() => void) | undefined;

  constructor(clock: Clock, afterMs: number, onSilent: () => void) {
    this.#clock = clock;
    this.#afterMs = afterMs;
    this.#onSilent = onSilent;
    this.lastMs = clock.monotonicMs();
    this.#plan(afterMs);
  }

  /** Bytes have come. Answers how long the silence before them was when it had been told of, else undefined. */
  heard(): number | undefined {
    const now = this.#clock.monotonicMs();
    const quietMs = now - this.lastMs;
    this.lastMs = now;
    if (!this.silent) return undefined;
    this.silent = false;
    this.#plan(this.#afterMs);
    return quietMs;
  }

  stop(): void {
    this.#cancel?.();
    this.#cancel = undefined;
  }

  // One timer for the whole time between silences instead of one for each chunk.
  #plan(ms: number): void {
    const dueMs = this.#clock.monotonicMs() + ms;
    this.#cancel = this.#clock.after(ms, () => {
      const now = this.#clock.monotonicMs();
      const restMs = this.lastMs + this.#afterMs - now;
      if (restMs > 0) this.#plan(restMs);
      else if (now - dueMs > LATE_MS) this.#plan(LATE_MS);
      else {
        this.silent = true;
        this.#onSilent();
      }
    });
  }
}

const LATE_MS = 200;
