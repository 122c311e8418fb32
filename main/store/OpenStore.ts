import type { KeyObject } from "node:crypto";
import { type Db, prepared } from "./db.ts";
import { faultOf, inPlainWords } from "./faults.ts";
import { LogWatch } from "./LogWatch.ts";
import { Chain } from "./ledger/Chain.ts";
import { checkDrafts } from "./ledger/checkDrafts.ts";
import { matchNamed } from "./ledger/matchNamed.ts";
import { type ForeignChain, mergeChain } from "./ledger/mergeChain.ts";
import type { Origin } from "./ledger/ownOrigin.ts";
import { packRecent } from "./ledger/packRecent.ts";
import { lastEntry } from "./ledger/readEntry.ts";
import { type SignedHead, signHeads } from "./ledger/signedHeads.ts";
import { holdingStatus } from "./projections/SpindleStatus.ts";
import { insertWaveforms } from "./records/waveforms.ts";
import { SpaceWatch } from "./SpaceWatch.ts";
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
  /** Signs the heads; undefined where there is none. */
  readonly key: KeyObject | undefined;
  readonly unlock: () => void;
};

/** Housekeeping waits so long after the last writing: nobody is about to accept then. */
const IDLE_MS = 2_000;

/** What `openStore` answers. */
export class OpenStore implements Store {
  readonly path: string;
  readonly demo: boolean;
  readonly db: Db;
  readonly #parts: OpenParts;
  readonly #chain: Chain | undefined;
  readonly #space: SpaceWatch;
  #refusal: Store["refusal"];
  #idle: NodeJS.Timeout | undefined;
  #log: LogWatch | undefined;

  constructor(parts: OpenParts) {
    this.path = parts.path;
    this.demo = parts.demo;
    this.db = parts.db;
    this.#parts = parts;
    this.#refusal = parts.refusal;
    this.#chain = parts.origin && new Chain(parts.db, parts.origin);
    this.#space = new SpaceWatch(parts.path);
  }

  get origin(): string | undefined {
    return this.#chain?.origin.origin;
  }

  get refusal(): Store["refusal"] {
    return this.#refusal;
  }

  append(batch: readonly EntryDraft[], extra: AppendExtra = {}): FiledEntry[] {
    const drafts = checkDrafts(batch);
    const waveforms = matchNamed(drafts, extra.waveforms ?? []);
    return this.write((db) => {
      if (this.#chain === undefined) throw new StoreError("readOnly", "This data file has no chain to continue.");
      const filed = this.#chain.append(drafts, this.#stamp());
      for (const [i, own] of waveforms) insertWaveforms(db, filed[i]!.n, own);
      extra.alsoInTransaction?.(db);
      return filed;
    });
  }

  appendAll(drafts: Iterable<EntryDraft>): number {
    return this.write((db) => {
      if (this.#chain === undefined) throw new StoreError("readOnly", "This data file has no chain to continue.");
      const chain = this.#chain;
      const stamp = this.#stamp();
      let filed = 0;
      holdingStatus(db, () => {
        for (const batch of batchesOf(drafts)) filed += chain.append(checkDrafts(batch), stamp).length;
      });
      return filed;
    });
  }

  merge(
    chains: readonly ForeignChain[],
    { detail, operatorId }: { detail: string; operatorId: string | null },
  ): number {
    return this.write((db) => {
      if (this.#chain === undefined) throw new StoreError("readOnly", "This data file has no chain to continue.");
      const stamp = this.#stamp();
      const mergeAll = () => chains.reduce((sum, chain) => sum + mergeChain(db, chain, stamp.atMs), 0);
      const added = holdingStatus(db, mergeAll);
      this.#chain.forget(); // its run may have ended, or its own entries come back
      this.#chain.append(checkDrafts([{ kind: "act", body: { what: "merged", detail, operatorId } }]), stamp);
      return added;
    });
  }

  write<T>(work: (db: Db) => T): T {
    if (this.#refusal !== undefined) throw new StoreError(this.#refusal.code, this.#refusal.message);
    try {
      this.#space.refuseWhenFull();
      const done = inPlainWords(() => this.#transaction(work));
      this.#tidyWhenIdle();
      this.#log?.wrote();
      return done;
    } catch (cause) {
      this.#chain?.forget();
      // After a failed sync nobody knows what the disk holds; writing on would build on sand.
      if (faultOf(cause) === "damaged") this.refuse("damaged", (cause as Error).message);
      throw cause;
    }
  }

  tidy(): void {
    clearTimeout(this.#idle);
    this.#idle = undefined;
    if (this.#refusal !== undefined) return;
    this.#quietly(() => {
      inPlainWords(() => this.#transaction(packRecent));
    });
  }

  whenLogGrows(call: () => void): void {
    this.#log = new LogWatch(this.db, this.path, call);
  }

  lastPlace(): number {
    return prepared<number | null>(this.db, "SELECT max(n) FROM entry").pluck().get() ?? 0;
  }

  lastEntryAtMs(): number | undefined {
    const last = lastEntry(this.db);
    return last && Date.parse(last.at);
  }

  newId(): string {
    const { newId, now } = this.#parts.options;
    return newId === undefined ? uuidV7(now()) : newId();
  }

  refuse(code: StoreFault, message: string): void {
    this.#refusal ??= { code, message };
  }

  erasing<T>(work: () => T): T {
    this.db.pragma("secure_delete = ON");
    try {
      return work();
    } finally {
      this.db.pragma("secure_delete = OFF");
      this.#quietly(() => this.db.pragma("wal_checkpoint(TRUNCATE)")); // a reader may hold it: then at closing
    }
  }

  signHeads(): SignedHead[] {
    const { key, options } = this.#parts;
    if (key === undefined) return [];
    return this.write((db) => signHeads(db, key, options.now()));
  }

  /** At opening and closing, which it must not hinder. */
  signQuietly(): void {
    if (this.#refusal === undefined && this.lastPlace() > 0) this.#quietly(() => this.signHeads());
  }

  close(): void {
    if (this.db.open) {
      this.signQuietly();
      this.tidy();
      this.db.close();
    }
    this.#parts.unlock();
  }

  #transaction<T>(work: (db: Db) => T): T {
    let done: T | undefined;
    this.db
      .transaction(() => {
        done = work(this.db);
      })
      .immediate();
    return done as T; // set by the transaction, or it threw
  }

  /** A full disk or a busy file can wait: nothing depends on the housekeeping. */
  #quietly(work: () => void): void {
    try {
      work();
    } catch (cause) {
      if (faultOf(cause) === "damaged") this.refuse("damaged", (cause as Error).message);
    }
  }

  #tidyWhenIdle(): void {
    if (this.#idle !== undefined) this.#idle.refresh();
    else this.#idle = setTimeout(() => this.tidy(), IDLE_MS).unref();
  }

  #stamp() {
    const { now, offsetMinutes } = this.#parts.options;
    const atMs = Math.floor(now());
    return { atMs, offsetMinutes: (offsetMinutes ?? offsetHere)(atMs), newId: () => this.newId() };
  }
}

/** So many are drawn at once. */
const BATCH = 256;

function* batchesOf<T>(all: Iterable<T>): Generator<T[]> {
  let batch: T[] = [];
  for (const one of all) {
    batch.push(one);
    if (batch.length < BATCH) continue;
    yield batch;
    batch = [];
  }
  if (batch.length > 0) yield batch;
}

/** Minutes east of UTC by this computer's own clock. */
const offsetHere = (ms: number) => 0 - new Date(ms).getTimezoneOffset(); // not a negation: that gives -0
