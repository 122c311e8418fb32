import type { Entry } from "../../../app/ledger/entry.ts";
import { type SealedEntry, sealEntry } from "../../../app/ledger/sealEntry.ts";
import { type Db, prepared } from "../db.ts";
import { applyEntry } from "../projections/applyEntry.ts";
import type { FiledEntry } from "../Store.ts";
import { putRow } from "../sealedRow.ts";
import type { CheckedDraft } from "./checkDrafts.ts";
import { type Head, headOf } from "./head.ts";
import type { Origin } from "./ownOrigin.ts";
import { packEntry } from "./packEntry.ts";
import { allRuns, placeOf } from "./place.ts";
import { sha256 } from "./sha256.ts";

export type Stamp = { readonly atMs: number; readonly offsetMinutes: number; readonly newId: () => string };

/** From so many entries on they are packed at once: a long fill wants space, a single accept wants to be quick. */
const MANY = 8;

/**
 * The chain this program continues. Remembers its end, and looks again when another connection has written since.
 * Its methods are called inside a transaction; `forget` after one that was rolled back.
 */
export class Chain {
  readonly origin: Origin;
  readonly #db: Db;
  #end: (Head & { readonly run: number }) | undefined;
  #version = -1;

  constructor(db: Db, origin: Origin) {
    this.#db = db;
    this.origin = origin;
  }

  /** Continues the chain with the drafts and brings the projections up to them. */
  append(drafts: readonly CheckedDraft[], stamp: Stamp): FiledEntry[] {
    let { run, seq, hash: prev } = this.#current();
    const at = new Date(stamp.atMs).toISOString();
    const { offsetMinutes, newId } = stamp;
    const filed = drafts.map(({ kind, body }) => {
      seq += 1;
      // In canonical order, which spares the sorting.
      const entry: Entry = { at, body, id: newId(), kind, offsetMinutes, origin: this.origin.origin, prev, seq, v: 1 };
      const sealed = sealEntry(entry, sha256);
      prev = sealed.hash;
      const n = placeOf(run, seq);
      insertEntry(this.#db, n, sealed, drafts.length >= MANY);
      applyEntry(this.#db, entry, n);
      return { ...entry, hash: prev, n };
    });
    this.#end = { run, seq, hash: prev };
    return filed;
  }

  /** What was remembered may not stand. */
  forget(): void {
    this.#end = undefined;
  }

  #current(): Head & { readonly run: number } {
    // Changes when another connection has committed: an import in a job, say.
    const version = prepared<number>(this.#db, "PRAGMA data_version").pluck().get()!;
    if (this.#end !== undefined && version === this.#version) return this.#end;
    this.#version = version;
    const head = headOf(this.#db, this.origin.n);
    return { ...head, run: openRun(this.#db, this.origin.n, head.seq) };
  }
}

/** The run an origin's next entry belongs to: the last one if it is its own, else a new one. @param seq  of its last entry so far */
export function openRun(db: Db, originN: number, seq: number): number {
  const last = allRuns(db).at(-1);
  if (last?.origin_n === originN) return last.n;
  const n = (last?.n ?? 0) + 1;
  putRow(db, "run", { n, origin_n: originN, first_seq: seq + 1 }, "new");
  return n;
}

export function insertEntry(db: Db, n: number, { entry, text, hash }: SealedEntry, pack: boolean): void {
  const bytes = Buffer.from(text, "utf8");
  const { codec, packed } = pack ? packEntry(bytes) : { codec: 0, packed: bytes };
  prepared(db, "INSERT INTO entry (n, kind, hash, length, codec, packed) VALUES (?, ?, ?, ?, ?, ?)").run(
    n,
    entry.kind,
    Buffer.from(hash, "hex"),
    bytes.length,
    codec,
    packed,
  );
}
