import { ChainWalk } from "../../../app/ledger/ChainWalk.ts";
import { type Db, prepared } from "../db.ts";
import { schemaDamage } from "../schemaDamage.ts";
import { sha256 } from "./appendEntries.ts";
import { unpackEntry } from "./packEntry.ts";

/** How many entries at a chain's end are walked before the first screen. */
const LAST = 20;

/**
 * The quick look at every start: the tables are what the program makes, and the end of each chain holds. A torn
 * write or a file cut short shows here; what lies deeper, `verify` finds in idle time.
 * @returns  the damage in words, or undefined
 */
export function damageAtOpening(db: Db): string | undefined {
  try {
    const schema = schemaDamage(db);
    if (schema !== undefined) return said(schema);
    for (const { n, origin } of prepared<{ n: number; origin: string }>(db, "SELECT n, origin FROM origin").all()) {
      const bad = firstBadAtEnd(db, n, origin);
      if (bad !== undefined) return said(`entry ${bad} of chain ${origin} is damaged`);
    }
    return undefined;
  } catch (cause) {
    return said(cause instanceof Error ? cause.message : String(cause));
  }
}

type Row = { seq: number; kind: string; hash: Buffer; length: number; packed: Buffer };

function firstBadAtEnd(db: Db, originN: number, origin: string): number | undefined {
  const rows = prepared<Row>(
    db,
    "SELECT seq, kind, hash, length, packed FROM entry WHERE origin_n = ? ORDER BY seq DESC LIMIT ?",
  ).all(originN, LAST + 1);
  rows.reverse();
  const before = rows.length > LAST ? rows.shift() : undefined; // only its hash is needed
  const walk = new ChainWalk(origin, sha256, before && { seq: before.seq, hash: before.hash.toString("hex") });
  return rows.find((row) => walk.take(stored(row)) !== undefined)?.seq;
}

function stored({ seq, kind, hash, length, packed }: Row) {
  return { seq, kind, hash: hash.toString("hex"), bytes: unpackEntry(packed, length) };
}

const said = (what: string) =>
  `The data file is damaged (${what}). It was opened for reading, nothing in it was changed. Restore the last backup; verify the records to see what still stands.`;
