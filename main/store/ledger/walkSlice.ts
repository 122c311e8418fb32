import { ChainWalk } from "../../../app/ledger/ChainWalk.ts";
import { type Db, prepared } from "../db.ts";
import { sha256 } from "./appendEntries.ts";
import type { DamageList } from "./DamageList.ts";
import { unpackEntry } from "./packEntry.ts";
import type { WaveformTally } from "./WaveformTally.ts";

/** n, origin_n, seq, kind, hash, length, packed: plain arrays, since a row object each would be a tenth of the walk. */
type Row = [number, number, number, string, Buffer, number, Buffer];

/** How many entries are walked at a time; also how often a walk asks whether to go on. */
export const SLICE = 1024;

/** Places of this file from after `from` to `to`. */
export type Slice = { readonly from: number; readonly to: number };

const COLUMNS = "n, origin_n, seq, kind, hash, length, packed";

/**
 * Walks the entries of a slice: each entry's hash, its place in its origin's chain, and that it names the one before.
 * Slices can be walked in any order and at once, since each begins with the hash stored before it.
 * @returns  how many entries were there
 */
export function walkSlice(db: Db, { from, to }: Slice, damage: DamageList, tally: WaveformTally): number {
  const walks = new Map<number, ChainWalk | undefined>();
  const rows = readRows(db, from, to, damage);
  for (const row of rows) {
    if (!walks.has(row[1])) walks.set(row[1], walkFrom(db, row[1], row[2]));
    takeRow(row, walks.get(row[1]), damage, tally);
  }
  return rows.length;
}

/** The rows that can be read. A page that cannot is stepped over entry by entry, and what it held is named. */
function readRows(db: Db, from: number, to: number, damage: DamageList): Row[] {
  const many = prepared<Row>(db, `SELECT ${COLUMNS} FROM entry WHERE n > ? AND n <= ? ORDER BY n`).raw();
  try {
    return many.all(from, to);
  } catch {
    const rows: Row[] = [];
    for (let n = from; n < to; n += 1) {
      try {
        rows.push(...many.all(n, n + 1));
      } catch (cause) {
        damage.add({
          what: "entry",
          place: n + 1,
          fault: "unreadable",
          detail: `the entry at place ${n + 1}: ${wordsOf(cause)}`,
        });
      }
    }
    return rows;
  }
}

/** The chain's walk up to before entry `seq`; undefined when the file knows no such chain. */
function walkFrom(db: Db, originN: number, seq: number): ChainWalk | undefined {
  const origin = prepared<string>(db, "SELECT origin FROM origin WHERE n = ?").pluck().get(originN);
  if (origin === undefined) return undefined;
  const before = prepared<{ seq: number; hash: Buffer }>(
    db,
    "SELECT seq, hash FROM entry WHERE origin_n = ? AND seq < ? ORDER BY seq DESC LIMIT 1",
  ).get(originN, seq);
  return new ChainWalk(origin, sha256, before && { seq: before.seq, hash: before.hash.toString("hex") });
}

function takeRow(row: Row, walk: ChainWalk | undefined, damage: DamageList, tally: WaveformTally): void {
  const [place, , seq, kind, hash, length, packed] = row;
  if (walk === undefined) {
    damage.add({
      what: "entry",
      place,
      seq,
      fault: "mislabelled",
      detail: `the entry at place ${place} belongs to no known chain`,
    });
    return;
  }
  const bytes = unpacked(packed, length);
  const fault = walk.take({ seq, kind, hash: hash.toString("hex"), bytes });
  if (kind === "check" || kind === "replacement") tally.addCheck(bytes);
  if (fault === undefined) return;
  const detail = `entry ${seq} (${kind}): ${said[fault]}`;
  damage.add({ what: "entry", place, origin: walk.origin, seq, fault, detail });
}

const said = {
  unreadable: "its bytes are no entry",
  altered: "its bytes are not those that were filed",
  mislabelled: "what stands beside its bytes says something else than they do",
  missing: "entries before it are gone",
  broken: "it does not continue the entry before it",
} as const;

const empty = Buffer.alloc(0);

function unpacked(packed: Uint8Array, length: number): Buffer {
  try {
    return unpackEntry(packed, length);
  } catch {
    return empty; // no hash fits it: named as altered
  }
}

export const wordsOf = (cause: unknown) => (cause instanceof Error ? cause.message : String(cause));
