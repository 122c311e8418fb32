import type { z } from "zod";
import type { Entry } from "../../app/ledger/entry.ts";
import type { Kind, kinds } from "../../app/ledger/kinds.ts";
import type { Db } from "./db.ts";
import type { ForeignChain } from "./ledger/mergeChain.ts";
import type { SignedHead } from "./ledger/signedHeads.ts";
import type { StoreFault } from "./StoreError.ts";

/** What is to be filed: a kind and its body, checked by the kind's schema. */
export type EntryDraft = {
  readonly [K in Kind]: { readonly kind: K; readonly body: z.input<(typeof kinds)[K]> };
}[Kind];

/** An entry as it now stands in the ledger. */
export type FiledEntry = Entry & {
  /** SHA-256 over the canonical form, lower-case hex. */
  readonly hash: string;
  /** Place in this data file, in order of arrival over all origins. */
  readonly n: number;
};

/** A cycle's readings as `encodeWaveform` packed them when the cycle closed. */
export type WaveformRow = {
  readonly cycleId: string;
  readonly bytes: Uint8Array;
  /** SHA-256 of `bytes`, hex; the check's cycle carries the same. */
  readonly hash: string;
  readonly sampleCount: number;
};

export type AppendExtra = {
  readonly waveforms?: readonly WaveformRow[];
  /** Work on unchained tables (draft, operators' names) that must stand or fall with the entries. */
  readonly alsoInTransaction?: (db: Db) => void;
};

/** One data file. Reading functions (`records/`) take `db`; all writing to the ledger goes through `append`. */
export type Store = {
  readonly path: string;
  readonly demo: boolean;
  readonly db: Db;
  /** The chain this program continues; undefined when nothing may be written. */
  readonly origin: string | undefined;
  /** Why nothing can be written just now; undefined when it can. */
  readonly refusal: { readonly code: StoreFault; readonly message: string } | undefined;
  /**
   * Files the batch in one transaction with one disk sync, then answers; on any throw nothing of it stands.
   * @throws StoreError  `readOnly`, `damaged`, `full`, `busy`
   * @throws ZodError  a body that is not what its kind asks for
   */
  append(batch: readonly EntryDraft[], extra?: AppendExtra): FiledEntry[];
  /**
   * Files many, drawn one by one so that they are never all in memory, in one transaction; on any throw, the source's too,
   * nothing of it stands. Long: it belongs in a job.
   * @returns  how many were filed
   * @throws  what `append` throws
   */
  appendAll(drafts: Iterable<EntryDraft>): number;
  /**
   * Takes over other files' chains, all or nothing, and files the act in the own chain. Long: it belongs in a job.
   * @returns  how many entries were new
   * @throws StoreError  `conflict`, `damaged`, `newer`, and what `append` throws
   */
  merge(chains: readonly ForeignChain[], act: { readonly detail: string; readonly operatorId: string | null }): number;
  /** Work on unchained tables alone (draft, names), in one transaction. Same refusals as `append`. */
  write<T>(work: (db: Db) => T): T;
  /** When the newest entry of any origin was made, by the clock of its PC; undefined in an empty file. */
  lastEntryAtMs(): number | undefined;
  /** Place of the newest entry in this file, 0 when empty: what was worked out from the file holds while it stands. */
  lastPlace(): number;
  /** A fresh UUIDv7 by the store's own clock. */
  newId(): string;
  /** Housekeeping: packs what was filed. Comes by itself when nothing was written for a while. */
  tidy(): void;
  /**
   * From here on the log is written back by whom `call` asks, in a thread: the disk may take its time. Without it the
   * writing does it by the way, now and then.
   */
  whenLogGrows(call: () => void): void;
  /**
   * Signs the head of every chain as it stands now, for a report to print, and answers all of them. Empty where there
   * is no key. Happens by itself when the file is opened and closed.
   */
  signHeads(): SignedHead[];
  /** Runs work that takes something out for good: what it frees is written over, and the log with it. */
  erasing<T>(work: () => T): T;
  /** From here on nothing is written: damage was found. */
  refuse(code: StoreFault, message: string): void;
  close(): void;
};

export type OpenOptions = {
  readonly path: string;
  /** Look, never write; enters beside a running program. Default false. */
  readonly readOnly?: boolean;
  /** Whether this is the demo's file. It is written into a new file and must match an old one. Default false. */
  readonly demo?: boolean;
  readonly now: () => number;
  /** Minutes east of UTC at that instant, as the PC's clock shows them; default: this PC's. */
  readonly offsetMinutes?: (ms: number) => number;
  readonly newId?: () => string;
  /** What tells this PC from another; default from host name and machine id. A file that comes from another PC starts a new origin. */
  readonly machine?: string;
  /** Begin a chain of its own: the file has just been restored. */
  readonly freshOrigin?: boolean;
};
