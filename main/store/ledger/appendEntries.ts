import { hash } from "node:crypto";
import { type Entry, GENESIS } from "../../../app/ledger/entry.ts";
import { type Kind, kinds } from "../../../app/ledger/kinds.ts";
import { type SealedEntry, sealEntry } from "../../../app/ledger/sealEntry.ts";
import { type Db, prepared } from "../db.ts";
import { applyEntry } from "../projections/applyEntry.ts";
import type { EntryDraft, FiledEntry } from "../Store.ts";
import { packEntry } from "./packEntry.ts";

export type Origin = { readonly n: number; readonly origin: string };
export type Stamp = { readonly atMs: number; readonly offsetMinutes: number; readonly newId: () => string };

/** A draft whose body has met its schema. */
export type CheckedDraft = { readonly kind: Kind; readonly body: Entry["body"] };

/** @throws ZodError  a body that is not what its kind asks for */
export function checkDrafts(batch: readonly EntryDraft[]): CheckedDraft[] {
  return batch.map(({ kind, body }) => ({ kind, body: kinds[kind].parse(body) }));
}

export const sha256 = (data: string | Uint8Array): string => hash("sha256", data, "hex");

/** Continues the origin's chain with the drafts and brings the projections up to them. The caller holds the transaction. */
export function appendEntries(db: Db, origin: Origin, drafts: readonly CheckedDraft[], stamp: Stamp): FiledEntry[] {
  let { seq, hash: prev } = headOf(db, origin.n);
  const at = new Date(stamp.atMs).toISOString();
  return drafts.map(({ kind, body }) => {
    seq += 1;
    const { offsetMinutes } = stamp;
    const entry: Entry = { v: 1, origin: origin.origin, seq, id: stamp.newId(), kind, at, offsetMinutes, prev, body };
    const sealed = sealEntry(entry, sha256);
    prev = sealed.hash;
    const n = insertEntry(db, origin.n, sealed);
    applyEntry(db, entry, n);
    return { ...entry, hash: sealed.hash, n };
  });
}

/** Number and hash of an origin's last entry; what a chain starts from when there is none. */
export function headOf(db: Db, originN: number): { readonly seq: number; readonly hash: string } {
  const row = prepared<{ seq: number; hash: Buffer }>(
    db,
    "SELECT seq, hash FROM entry WHERE origin_n = ? ORDER BY seq DESC LIMIT 1",
  ).get(originN);
  return row === undefined ? { seq: 0, hash: GENESIS } : { seq: row.seq, hash: row.hash.toString("hex") };
}

/** @returns  the entry's place in this file */
export function insertEntry(db: Db, originN: number, { entry, text, hash: hex }: SealedEntry): number {
  const { packed, length } = packEntry(text);
  const done = prepared(
    db,
    "INSERT INTO entry (origin_n, seq, kind, hash, length, packed) VALUES (?, ?, ?, ?, ?, ?)",
  ).run(originN, entry.seq, entry.kind, Buffer.from(hex, "hex"), length, packed);
  return Number(done.lastInsertRowid);
}
