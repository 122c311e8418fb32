const UNDO_MS = 60_000;

/** The check just filed, for the minute in which one act takes it back. */
export class Undo {
  readonly #now: () => number;
  #last: { readonly checkId: string; readonly untilMs: number } | undefined;

  constructor(now: () => number) {
    this.#now = now;
  }

  /** @returns  until when it may be taken back, wall clock */
  filed(checkId: string): number {
    this.#last = { checkId, untilMs: this.#now() + UNDO_MS };
    return this.#last.untilMs;
  }

  get current(): { readonly checkId: string; readonly untilMs: number } | undefined {
    const leftMs = (this.#last?.untilMs ?? Number.NEGATIVE_INFINITY) - this.#now();
    return leftMs >= 0 && leftMs <= UNDO_MS ? this.#last : undefined; // more than a minute: the clock was set back
  }

  allows(checkId: string): boolean {
    return this.current?.checkId === checkId;
  }

  forget(checkId: string): void {
    if (this.#last?.checkId === checkId) this.#last = undefined;
  }
}
