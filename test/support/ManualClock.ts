import type { Clock } from "../../main/link/Clock.ts";

/** A clock whose hands a test turns. Timers fire in their order as time passes; promises get their turn in between. */
export class ManualClock implements Clock {
  #nowMs = 1_000;
  #wallOffMs = 1_750_000_000_000;
  #timers: { dueMs: number; call: () => void }[] = [];

  monotonicMs(): number {
    return this.#nowMs;
  }

  wallMs(): number {
    return this.#nowMs + this.#wallOffMs;
  }

  after(ms: number, call: () => void): () => void {
    const timer = { dueMs: this.#nowMs + ms, call };
    this.#timers.push(timer);
    return () => {
      this.#timers = this.#timers.filter((t) => t !== timer);
    };
  }

  /** Timers waiting. */
  get pending(): number {
    return this.#timers.length;
  }

  async advance(ms: number): Promise<void> {
    const untilMs = this.#nowMs + ms;
    await settled();
    for (;;) {
      const next = this.#timers.filter((t) => t.dueMs <= untilMs).sort((a, b) => a.dueMs - b.dueMs)[0];
      if (next === undefined) break;
      this.#timers = this.#timers.filter((t) => t !== next);
      this.#nowMs = Math.max(this.#nowMs, next.dueMs);
      next.call();
      await settled();
    }
    this.#nowMs = untilMs;
  }

  /** Time passes while the program is held up: nothing fires. */
  stall(ms: number): void {
    this.#nowMs += ms;
  }
}

/** Lets promises and callbacks that are due run. */
export async function settled(): Promise<void> {
  for (let i = 0; i < 3; i += 1) await new Promise((resolve) => setImmediate(resolve));
}
