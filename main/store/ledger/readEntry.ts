import type { Entry } from "../../../app/ledger/entry.ts";
import type { Kind } from "../../../app/ledger/kinds.ts";
import { type Db, prepared } from "../db.ts";
import type { FiledEntry } from "../Store.ts";
import { type Packed, unpackEntry } from "./packEntry.ts";

type Row = Packed & { n: number; hash: Buffer; length: number };

/** The entry at place `n` of this file, as it was filed; undefined when there is none. */
export function readEntry(db: Db, n: number): FiledEntry | undefined {
  const row = prepared<Row>(db, "SELECT n, hash, length, codec, packed FROM entry WHERE n = ?").get(n);
  return row && toFiled(row);
}

/** The entry that came last to this file, of whatever origin. */
export function lastEntry(db: Db): FiledEntry | undefined {
  const row = prepared<Row>(db, "SELECT n, hash, length, codec, packed FROM entry ORDER BY n DESC LIMIT 1").get();
  return row && toFiled(row);
}

/**
 * All entries of one kind, oldest first. Cheap for every kind but `check`, of which there are many:
 * those are read through their projection.
 */
export function entriesOfKind<K extends Exclude<Kind, "check">>(db: Db, kind: K): (FiledEntry & Entry<K>)[] {
  const rows = prepared<Row>(
    db,
    "SELECT n, hash, length, codec, packed FROM entry WHERE kind = ? AND kind <> 'check' ORDER BY n",
  ).all(kind);
  return rows.map((row) => toFiled(row) as FiledEntry & Entry<K>); // the WHERE clause has just chosen the kind
}

/** Every entry in the order it came to this file, read in pieces, so that the connection is free in between. */
export function* allEntries(db: Db): Generator<FiledEntry> {
  for (const { entry } of allWithText(db)) yield entry;
}

/** The same, each with its canonical text as it lies in the file. */
export function* allWithText(db: Db): Generator<{ readonly entry: FiledEntry; readonly text: string }> {
  const some = prepared<Row>(db, "SELECT n, hash, length, codec, packed FROM entry WHERE n > ? ORDER BY n LIMIT 256");
  for (let after = 0; ; ) {
    const rows = some.all(after);
    if (rows.length === 0) return;
    for (const row of rows) {
      const text = textOf(row);
      yield { entry: parsed(row, text), text };
    }
    after = rows.at(-1)!.n;
  }
}

const toFiled = (row: Row): FiledEntry => parsed(row, textOf(row));

const textOf = (row: Row): string => unpackEntry(row, row.length).toString("utf8");

function parsed({ n, hash }: Row, text: string): FiledEntry {
  // Written by `Chain` or taken over by `mergeChain`, both after the schema had seen it.
  const entry = JSON.parse(text) as Entry;
  return { ...entry, hash: hash.toString("hex"), n };
}
