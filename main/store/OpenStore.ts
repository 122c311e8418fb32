import type { Db } from "./db.ts";
import { prepared } from "./db.ts";
import { faultOf, inPlainWords } from "./faults.ts";
import { refuseWhenFull } from "./freeSpace.ts";
import { appendEntries, checkDrafts, type Origin } from "./ledger/appendEntries.ts";
import { matchNamed } from "./ledger/matchNamed.ts";
import { readEntry } from "./ledger/readEntry.ts";
import { insertWaveform } from "./records/waveforms.ts";
import type { AppendExtra, EntryDraft, FiledEntry, OpenOptions, Store } from "./Store.ts";
import { StoreError, type StoreFault } from "./StoreError.ts";
import { uuidV7 } from "./uuidV7.ts";

export type OpenParts = {
  readonly path: string;
  readonly demo: boolean;
  readonly db: Db;
  readonly origin: Origin | undefined;
  readonly refusal: Store["refusal"];
  readonly options: OpenOptions;
  readonly unlock: () => void;
};

/** What `openStore` answers. */
export class OpenStore implements Store {
  readonly path: string;
  readonly demo: boolean;
  readonly db: Db;
  readonly #parts: OpenParts;
  #refusal: Store["refusal"];

  constructor(parts: OpenParts) {
    this.path = parts.path;
    this.demo = parts.demo;
    this.db = parts.db;
    this.#parts = parts;
    this.#refusal = parts.refusal;
  }

  get origin(): string | undefined {
    return this.#parts.origin?.origin;
  }

  get refusal(): Store["refusal"] {
    return this.#refusal;
  }

  append(batch: readonly EntryDraft[], extra: AppendExtra = {}): FiledEntry[] {
    const { origin } = this.#parts;
    const drafts = checkDrafts(batch);
    matchNamed(drafts, extra.waveforms ?? []);
    return this.write((db) => {
      if (origin === undefined) throw new StoreError("readOnly", "This data file has no chain to continue.");
      for (const waveform of extra.waveforms ?? []) insertWaveform(db, waveform);
      const filed = appendEntries(db, origin, drafts, this.#stamp());
      extra.alsoInTransaction?.(db);
      return filed;
    });
  }

  write<T>(work: (db: Db) => T): T {
    if (this.#refusal !== undefined) throw new StoreError(this.#refusal.code, this.#refusal.message);
    try {
      refuseWhenFull(this.path);
      return inPlainWords(() => this.db.transaction(() => work(this.db)).immediate());
    } catch (cause) {
      // After a failed sync nobody knows what the disk holds; writing on would build on sand.
      if (faultOf(cause) === "damaged") this.refuse("damaged", (cause as Error).message);
      throw cause;
    }
  }

  lastEntryAtMs(): number | undefined {
    const n = prepared<number | null>(this.db, "SELECT max(n) FROM entry").pluck().get();
    const last = n == null ? undefined : readEntry(this.db, n);
    return last && Date.parse(last.at);
  }

  newId(): string {
    const { newId, now } = this.#parts.options;
    return newId === undefined ? uuidV7(now()) : newId();
  }

  refuse(code: StoreFault, message: string): void {
    this.#refusal ??= { code, message };
  }

  close(): void {
    if (!this.db.open) return;
    this.db.close();
    this.#parts.unlock();
  }

  #stamp() {
    const { now, offsetMinutes } = this.#parts.options;
    const atMs = Math.floor(now());
    return { atMs, offsetMinutes: (offsetMinutes ?? offsetHere)(atMs), newId: () => this.newId() };
  }
}

/** Minutes east of UTC by this computer's own clock. */
const offsetHere = (ms: number) => 0 - new Date(ms).getTimezoneOffset(); // not a negation: that gives -0
