import type { LedgerReport } from "../store/ledger/LedgerReport.ts";
import type { Store } from "../store/Store.ts";

export type IdleVerifyOptions = {
  readonly store: Pick<Store, "lastPlace" | "refuse" | "refusal">;
  readonly now: () => number;
  /** Walks the file, by the job. */
  readonly walk: () => Promise<LedgerReport>;
  /** Damage was found: from here on nothing is written. */
  readonly onDamage: (report: LedgerReport) => void;
  readonly onFault: (message: string, cause: unknown) => void;
};

/** Nothing was filed for so long: nobody is measuring. */
const IDLE_MS = 10 * 60_000;
const AGAIN_MS = 24 * 3_600_000;

/**
 * Walks the whole file once a day while nobody measures: the look at every start is a quick one, and a bad disk should
 * be noticed while the backups are still good. Has no timer: whoever owns it calls `tick` every minute or so.
 */
export class IdleVerify {
  readonly #options: IdleVerifyOptions;
  #lookedMs = Number.NEGATIVE_INFINITY;
  #place = -1;
  #quietSinceMs = Number.POSITIVE_INFINITY;
  #nextMs = Number.NEGATIVE_INFINITY;
  #walking = false;

  constructor(options: IdleVerifyOptions) {
    this.#options = options;
  }

  async tick(): Promise<void> {
    const { store, now, walk, onDamage, onFault } = this.#options;
    if (now() < this.#lookedMs) this.#nextMs = this.#quietSinceMs = now(); // the clock was set back
    this.#lookedMs = now();
    if (store.lastPlace() !== this.#place) {
      this.#place = store.lastPlace();
      this.#quietSinceMs = now();
    }
    if (this.#walking || store.refusal !== undefined) return;
    if (now() - this.#quietSinceMs < IDLE_MS || now() < this.#nextMs) return;
    this.#walking = true;
    this.#nextMs = now() + AGAIN_MS;
    try {
      const report = await walk();
      if (report.damagedCount === 0) return;
      store.refuse("damaged", damageFound(report));
      onDamage(report);
    } catch (cause) {
      onFault("the records could not be walked", cause); // stopped, or the file was swapped: tomorrow again
    } finally {
      this.#walking = false;
    }
  }
}

/** Why nothing is written any more, once damage was found. */
export const damageFound = ({ damagedCount, damaged }: LedgerReport) =>
  `The records are damaged in ${damagedCount} places, first: ${damaged[0]?.detail}. Nothing more is written, so that nothing gets worse. ` +
  "Restore the last backup to a new place and compare, or verify to see what still stands.";
