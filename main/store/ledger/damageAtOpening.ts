import { ChainWalk } from "../../../app/ledger/ChainWalk.ts";
import { type Db, prepared } from "../db.ts";
import { schemaDamage } from "../schemaDamage.ts";
import { type Packed, unpackEntry } from "./packEntry.ts";
import { allRuns, placeOf, type Run, seqOf } from "./place.ts";
import { sha256 } from "./sha256.ts";

/** How many entries at a run's end are walked before the first screen. */
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
    const origins = prepared<{ n: number; origin: string }>(db, "SELECT n, origin FROM origin").all();
    const lastRuns = new Map(allRuns(db).map((run) => [run.origin_n, run]));
    for (const { n, origin } of origins) {
      const run = lastRuns.get(n);
      const bad = run && firstBadAtEnd(db, run, origin);
      if (bad !== undefined) return said(`entry ${bad} of chain ${origin} is damaged`);
    }
    return undefined;
  } catch (cause) {
    return said(cause instanceof Error ? cause.message : String(cause));
  }
}

type Row = Packed & { n: number; kind: string; hash: Buffer; length: number };

function firstBadAtEnd(db: Db, run: Run, origin: string): number | undefined {
  const rows = prepared<Row>(
    db,
    "SELECT n, kind, hash, length, codec, packed FROM entry WHERE n >= ? AND n < ? ORDER BY n DESC LIMIT ?",
  ).all(placeOf(run.n, 0), placeOf(run.n + 1, 0), LAST + 1);
  rows.reverse();
  // The first row is only looked at for its hash, unless the chain begins with it.
  const before = rows[0] === undefined || seqOf(rows[0].n) === 1 ? undefined : rows.shift();
  const walk = new ChainWalk(origin, sha256, before && { seq: seqOf(before.n), hash: before.hash.toString("hex") });
  const bad = rows.find(({ n, kind, hash, length, ...packed }) => {
    const bytes = unpackEntry(packed, length);
    return walk.take({ seq: seqOf(n), kind, hash: hash.toString("hex"), bytes }) !== undefined;
  });
  return bad && seqOf(bad.n);
}

const said = (what: string) =>
  `The data file is damaged (${what}). It was opened for reading, nothing in it was changed. Restore the last backup; verify the records to see what still stands.`;
