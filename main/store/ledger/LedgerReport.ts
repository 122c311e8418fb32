import { type Db, prepared } from "../db.ts";
import type { Damage } from "./DamageList.ts";
import { headOf } from "./head.ts";

/** How far one origin's chain reaches and holds. */
export type ChainReport = {
  readonly origin: string;
  /** Whether it was taken over from another file. */
  readonly merged: boolean;
  /** Number and hash of its last entry. */
  readonly entries: number;
  readonly head: string;
  /** Number of the first entry that does not hold; undefined when all do. What stands before it still stands. */
  readonly firstDamaged: number | undefined;
};

export type LedgerReport = {
  /** Entries that are there and were walked. */
  readonly entries: number;
  readonly waveforms: number;
  /** Waveforms that checks name but that stayed behind when records were taken over from another file. */
  readonly waveformsLeftOut: number;
  readonly signedHeads: number;
  /** The public keys that signed them, oldest first; a lost key shows as a second one. */
  readonly keys: readonly string[];
  readonly chains: readonly ChainReport[];
  /** The first thousand things found wrong, in the order of the file. */
  readonly damaged: readonly Damage[];
  readonly damagedCount: number;
};

/** Each chain's reach, and from the damage found how far it holds. */
export function chainReports(db: Db, damaged: readonly Damage[]): ChainReport[] {
  const origins = prepared<{ n: number; origin: string; machine: string | null }>(
    db,
    "SELECT n, origin, machine FROM origin ORDER BY n",
  ).all();
  return origins.map(({ n, origin, machine }) => {
    const { seq, hash } = headOf(db, n);
    const bad = damaged.filter((d) => d.what === "entry" && d.origin === origin).map((d) => d.seq ?? 0);
    const firstDamaged = bad.length === 0 ? undefined : Math.min(...bad);
    return { origin, merged: machine === null, entries: seq, head: hash, firstDamaged };
  });
}

/** Structure first, then by place in the file. */
export const inOrder = (damaged: readonly Damage[]): Damage[] =>
  damaged.toSorted(
    (a, b) => Number(b.what === "structure") - Number(a.what === "structure") || (a.place ?? 0) - (b.place ?? 0),
  );
