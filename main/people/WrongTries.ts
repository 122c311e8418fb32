const FREE = 3;
const FIRST_WAIT_MS = 30_000;
const LONGEST_WAIT_MS = 15 * 60_000;

/** Slows down who tries PINs out: three tries are free, then each wrong one costs twice the wait, up to a quarter of an hour. */
export class WrongTries {
  readonly #now: () => number;
  readonly #wrong = new Map<string, { count: number; untilMs: number }>();

  /** @param now  must not go back */
  constructor(now: () => number) {
    this.#now = now;
  }

  /** How long this person has to wait before the next try, 0 when it may be made. */
  waitMs(operatorId: string): number {
    return Math.max(0, (this.#wrong.get(operatorId)?.untilMs ?? 0) - this.#now());
  }

  /** Counts a try as wrong; said before it is checked, so that tries side by side count too. */
  tried(operatorId: string): void {
    const count = (this.#wrong.get(operatorId)?.count ?? 0) + 1;
    const wait = count < FREE ? 0 : Math.min(LONGEST_WAIT_MS, FIRST_WAIT_MS * 2 ** (count - FREE));
    this.#wrong.set(operatorId, { count, untilMs: this.#now() + wait });
  }

  /** It was the right one, or it was reset. */
  forget(operatorId: string): void {
    this.#wrong.delete(operatorId);
  }
}
