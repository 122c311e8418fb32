import { readdir } from "node:fs/promises";
import type { BackupView, Generations } from "../../app/contract/backupViews.ts";
import { readBackupName } from "../store/copies/backupName.ts";

export type BackupChoice = { readonly folder: string | undefined; readonly keep: Generations };

/** What making one answered, as far as it matters here. */
export type Made = { readonly file: string; readonly entries: number; readonly damagedCount: number };

export type DailyBackupOptions = {
  /** Where to; asked each time, since it can be changed. */
  readonly choice: () => BackupChoice;
  readonly demo: boolean;
  /** First eight digits of whose backups count. */
  readonly origin: () => string | undefined;
  /** Since when there are records; undefined: none yet. */
  readonly recordsSinceMs: () => number | undefined;
  readonly now: () => number;
  /** Makes the backup, by the job; rejects with words for the operator. */
  readonly make: (folder: string, keep: Generations) => Promise<Made>;
  readonly onChange: (view: BackupView) => void;
};

const DAY_MS = 86_400_000;
/** After a failure, so long until the next try: a stick may be put in again. */
const RETRY_MS = 10 * 60_000;
/** A weekend may pass without a word. */
const OVERDUE_MS = 3 * DAY_MS;
const CHOOSE_MS = 7 * DAY_MS;

/**
 * Sees to a backup a day. It has no timer: whoever owns it calls `tick` every minute or so. What was made last it reads
 * from the folder's own names, so a stick that is changed every week is served as soon as it is there. The folder is only
 * looked at in a tick and never waited for: a share that is away may take its time to say so.
 */
export class DailyBackup {
  readonly #options: DailyBackupOptions;
  #lastAtMs: number | undefined;
  #verifiedEntries: number | undefined;
  #problem: string | undefined;
  /** No try in this time; a clock that was set back to before it ends the waiting. */
  #wait = { fromMs: 0, untilMs: 0 };
  #busy = false;
  #ended = false;
  #said = "";

  constructor(options: DailyBackupOptions) {
    this.#options = options;
  }

  get view(): BackupView {
    const { folder, keep } = this.#options.choice();
    return {
      folder,
      keep,
      lastAtMs: folder === undefined ? undefined : this.#lastAtMs,
      verifiedEntries: this.#verifiedEntries,
      problem: folder === undefined ? undefined : this.#problem,
      late: this.#late(folder),
    };
  }

  async tick(): Promise<void> {
    if (this.#busy || this.#ended) return;
    this.#busy = true;
    try {
      const { folder, keep } = this.#options.choice();
      this.#lastAtMs = folder === undefined ? undefined : await this.#lastIn(folder);
      if (folder !== undefined && this.#isDue()) await this.#makeOne(folder, keep);
    } finally {
      this.#busy = false;
      if (!this.#ended) this.#tell();
    }
  }

  /** The file it is the backup of is being closed. */
  end(): void {
    this.#ended = true;
  }

  /** The folder was changed, or the operator asks: what was wrong with the old one is over. */
  tryAgain(): void {
    this.#waitFor(0);
    this.#problem = undefined;
    this.#lastAtMs = undefined;
    this.#tell();
  }

  #isDue(): boolean {
    const nowMs = this.#options.now();
    if (nowMs >= this.#wait.fromMs && nowMs < this.#wait.untilMs) return false;
    return this.#lastAtMs === undefined || nowMs - this.#lastAtMs >= DAY_MS;
  }

  async #makeOne(folder: string, keep: Generations): Promise<void> {
    const { make } = this.#options;
    try {
      const { file, entries, damagedCount } = await make(folder, keep);
      if (damagedCount > 0) {
        this.#problem = damagedCopy(file);
        this.#waitFor(DAY_MS); // one copy of damaged records a day is enough
        return;
      }
      this.#problem = undefined;
      this.#waitFor(0);
      this.#verifiedEntries = entries;
      this.#lastAtMs = await this.#lastIn(folder);
    } catch (cause) {
      this.#problem = cause instanceof Error ? cause.message : String(cause);
      this.#waitFor(RETRY_MS);
    }
  }

  #waitFor(ms: number): void {
    const fromMs = this.#options.now();
    this.#wait = { fromMs, untilMs: fromMs + ms };
  }

  #late(folder: string | undefined): BackupView["late"] {
    const { demo, now, recordsSinceMs } = this.#options;
    const sinceMs = demo ? undefined : recordsSinceMs();
    if (sinceMs === undefined) return undefined;
    if (folder === undefined) return now() - sinceMs >= CHOOSE_MS ? "noFolder" : undefined;
    const last = this.#lastAtMs;
    if (last === undefined) return this.#problem === undefined ? undefined : "overdue";
    return now() - last >= OVERDUE_MS ? "overdue" : undefined;
  }

  /** Says how it stands when that is news. */
  #tell(): void {
    const { view } = this;
    const said = JSON.stringify(view);
    if (said === this.#said) return;
    this.#said = said;
    this.#options.onChange(view);
  }

  async #lastIn(folder: string): Promise<number | undefined> {
    const { demo, origin, now } = this.#options;
    const own = origin()?.slice(0, 8);
    let names: string[];
    try {
      names = await readdir(folder);
    } catch {
      return undefined; // not there: making one will say so
    }
    const times = names.flatMap((name) => {
      const read = readBackupName(name);
      return read?.demo === demo && read.origin === own ? [read.atMs] : [];
    });
    // One from the future tells of a clock that was wrong: it must neither stand for today's nor call for one at every look.
    const past = times.filter((atMs) => atMs <= now());
    return past.length === 0 ? undefined : Math.max(...past);
  }
}

const damagedCopy = (file: string) =>
  `The records are damaged, and so is the copy made of them (${file}). Older backups were left as they are. Verify the records.`;
