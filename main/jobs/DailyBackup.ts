import { readdirSync } from "node:fs";
import { readBackupName } from "../store/copies/backupName.ts";

export type DailyBackupOptions = {
  /** Where to; undefined while none is chosen. Asked each time, since it can be changed. */
  readonly folder: () => string | undefined;
  readonly demo: boolean;
  /** First eight digits of whose backups count. */
  readonly origin: () => string | undefined;
  readonly now: () => number;
  /** Makes the backup, by the job; rejects with words for the operator. */
  readonly make: (folder: string) => Promise<unknown>;
  readonly onChange: (view: DailyBackupView) => void;
};

export type DailyBackupView = {
  readonly folder: string | undefined;
  /** When the newest backup in the folder was made; undefined: none there, or the folder cannot be seen. */
  readonly lastAtMs: number | undefined;
  /** Why the last try failed; gone when one succeeds. */
  readonly problem: string | undefined;
};

const DAY_MS = 86_400_000;
/** After a failure, so long until the next try: a stick may be put in again. */
const RETRY_MS = 10 * 60_000;

/**
 * Sees to a backup a day. It has no timer: whoever owns it calls `tick` every minute or so. What was made last it reads
 * from the folder's own names, so a stick that is changed every week is served as soon as it is there.
 */
export class DailyBackup {
  readonly #options: DailyBackupOptions;
  #problem: string | undefined;
  #notBeforeMs = Number.NEGATIVE_INFINITY;
  #making = false;

  constructor(options: DailyBackupOptions) {
    this.#options = options;
  }

  get view(): DailyBackupView {
    const folder = this.#options.folder();
    return { folder, lastAtMs: folder === undefined ? undefined : this.#lastIn(folder), problem: this.#problem };
  }

  async tick(): Promise<void> {
    const { folder: chosen, now, make, onChange } = this.#options;
    const folder = chosen();
    if (folder === undefined || this.#making || now() < this.#notBeforeMs) return;
    const last = this.#lastIn(folder);
    // A backup from the future is a clock that was wrong; it must not keep others from being made.
    if (last !== undefined && last <= now() && now() - last < DAY_MS) return;
    this.#making = true;
    try {
      await make(folder);
      this.#problem = undefined;
      this.#notBeforeMs = Number.NEGATIVE_INFINITY;
    } catch (cause) {
      this.#problem = cause instanceof Error ? cause.message : String(cause);
      this.#notBeforeMs = now() + RETRY_MS;
    } finally {
      this.#making = false;
      onChange(this.view);
    }
  }

  /** Tries again at the next tick: the folder was changed, or the operator asks. */
  tryAgain(): void {
    this.#notBeforeMs = Number.NEGATIVE_INFINITY;
  }

  #lastIn(folder: string): number | undefined {
    const { demo, origin } = this.#options;
    const own = origin()?.slice(0, 8);
    let names: string[];
    try {
      names = readdirSync(folder);
    } catch {
      return undefined; // not there: `make` will say so
    }
    const times = names.map(readBackupName).filter((name) => name?.demo === demo && name.origin === own);
    return times.length === 0 ? undefined : Math.max(...times.map((name) => name!.atMs));
  }
}
