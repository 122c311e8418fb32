import { ChainWalk } from "../../../app/ledger/ChainWalk.ts";
import { type Db, prepared } from "../db.ts";
import { wordsOf } from "../wordsOf.ts";
import type { DamageList } from "./DamageList.ts";
import { unpackEntry } from "./packEntry.ts";
import { placeOf, seqOf } from "./place.ts";
import { sha256 } from "./sha256.ts";
import type { Slice } from "./slices.ts";
import type { WaveformTally } from "./WaveformTally.ts";

/** n, kind, hash, length, packed: plain arrays, since a row object each would be a tenth of the walk. */
type Row = [number, string, Buffer, number, Buffer];

/**
 * Walks the entries of a slice: each entry's hash, its place in its origin's chain, and that it names the one before.
 * Slices can be walked in any order and at once, since each begins with the hash stored before it.
 * @returns  how many entries were there
 */
export function walkSlice(db: Db, slice: Slice, damage: DamageList, tally: WaveformTally): number {
  const before = slice.before === undefined ? undefined : { seq: seqOf(slice.before), hash: hashAt(db, slice.before) };
  const walk = new ChainWalk(slice.origin, sha256, before);
  const rows = readRows(db, slice, damage);
  for (const row of rows) takeRow(row, walk, damage, tally);
  return rows.length;
}

function hashAt(db: Db, place: number): string {
  return prepared<Buffer>(db, "SELECT hash FROM entry WHERE n = ?").pluck().get(place)?.toString("hex") ?? "";
}

/** The rows that can be read. A page that cannot is stepped over entry by entry, and what it held is named. */
function readRows(db: Db, { run, from, to, origin }: Slice, damage: DamageList): Row[] {
  const many = prepared<Row>(
    db,
    "SELECT n, kind, hash, length, packed FROM entry WHERE n >= ? AND n <= ? ORDER BY n",
  ).raw();
  try {
    return many.all(placeOf(run, from), placeOf(run, to));
  } catch {
    const rows: Row[] = [];
    for (let seq = from; seq <= to; seq += 1) {
      try {
        rows.push(...many.all(placeOf(run, seq), placeOf(run, seq)));
      } catch (cause) {
        damage.add({
          what: "entry",
          place: placeOf(run, seq),
          origin,
          seq,
          fault: "unreadable",
          detail: `entry ${seq}: ${wordsOf(cause)}`,
        });
      }
    }
    return rows;
  }
}

function takeRow(
  [place, kind, hash, length, packed]: Row,
  walk: ChainWalk,
  damage: DamageList,
  tally: WaveformTally,
): void {
  const seq = seqOf(place);
  const bytes = unpacked(packed, length);
  const fault = walk.take({ seq, kind, hash: hash.toString("hex"), bytes });
  if (kind === "check" || kind === "replacement") tally.addCheck(bytes);
  if (fault === undefined) return;
  damage.add({
    what: "entry",
    place,
    origin: walk.origin,
    seq,
    fault,
    detail: `entry ${seq} (${kind}): ${said[fault]}`,
  });
}

const said = {
  unreadable: "its bytes are no entry",
  altered: "its bytes are not those that were filed",
  mislabelled: "what stands beside its bytes says something else than they do",
  missing: "entries before it are gone",
  broken: "it does not continue the entry before it",
} as const;

const empty = Buffer.alloc(0);

function unpacked(packed: Buffer, length: number): Buffer {
  try {
    return unpackEntry(packed, length);
  } catch {
    return empty; // no hash fits it: named as altered
  }
}
