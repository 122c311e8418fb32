import type { ChainBeside } from "../../../app/contract/backupViews.ts";
import { type Db, prepared } from "../db.ts";
import { headOf } from "../ledger/head.ts";
import { placeOfEntry } from "../ledger/place.ts";

export type BesideBackup = {
  readonly chains: readonly ChainBeside[];
  /** Entries of the open file that the backup does not hold. */
  readonly lost: number;
  readonly lostChecks: number;
};

/**
 * Which entries of a file another one holds too, chain by chain. Each hash covers all entries before it, so two chains
 * that agree at one place agree up to there, and the last such place is found by halving.
 */
export function besideBackup(open: Db, backup: Db): BesideBackup {
  const there = new Map(originsOf(backup).map(({ n, origin }) => [origin, n]));
  let [lost, lostChecks] = [0, 0];
  const chains = originsOf(open).map(({ n, origin }): ChainBeside => {
    const other = there.get(origin);
    const here = headOf(open, n).seq;
    const end = other === undefined ? 0 : headOf(backup, other).seq;
    const same = other === undefined ? 0 : lastSame(open, n, backup, other, Math.min(here, end));
    lost += here - same;
    lostChecks += checksFrom(open, n, same + 1);
    return { origin, here, there: end, same };
  });
  return { chains, lost, lostChecks };
}

function lastSame(a: Db, aN: number, b: Db, bN: number, upTo: number): number {
  let [low, high] = [0, upTo];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    const hash = hashAt(a, aN, middle);
    if (hash !== undefined && hash === hashAt(b, bN, middle)) low = middle;
    else high = middle - 1;
  }
  return low;
}

function hashAt(db: Db, originN: number, seq: number): string | undefined {
  const place = placeOfEntry(db, originN, seq);
  if (place === undefined) return undefined;
  return prepared<Buffer>(db, "SELECT hash FROM entry WHERE n = ?").pluck().get(place)?.toString("hex");
}

/** Checks of a chain from an entry on, wherever its stretches lie in the file. */
function checksFrom(db: Db, originN: number, seq: number): number {
  const counted = prepared<number>(
    db,
    "SELECT count(*) FROM entry JOIN run ON run.n = entry.n >> 32 WHERE run.origin_n = ? AND entry.kind = 'check' AND (entry.n & 4294967295) >= ?",
  );
  return counted.pluck().get(originN, seq) ?? 0;
}

const originsOf = (db: Db) =>
  prepared<{ n: number; origin: string }>(db, "SELECT n, origin FROM origin ORDER BY n").all();
