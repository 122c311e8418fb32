import { type Db, prepared } from "../db.ts";
import { wordsOf } from "../wordsOf.ts";
import type { DamageList } from "./DamageList.ts";
import { unpackEntry, unpackMany } from "./packEntry.ts";
import { placeOf } from "./place.ts";
import type { Slice } from "./slices.ts";

/** n, kind, hash, length, codec, packed: plain arrays, since a row object each would be a tenth of a walk. */
export type StoredRow = [n: number, kind: string, hash: string, length: number, codec: number, packed: Buffer];

/** The rows of a slice that can be read. A page that cannot is stepped over entry by entry, and what it held is named. */
export function readRows(db: Db, { run, from, to, origin }: Slice, damage: DamageList): StoredRow[] {
  const many = prepared<StoredRow>(db, ROWS).raw();
  try {
    return many.all(placeOf(run, from), placeOf(run, to));
  } catch {
    const rows: StoredRow[] = [];
    for (let seq = from; seq <= to; seq += 1) {
      const place = placeOf(run, seq);
      try {
        rows.push(...many.all(place, place));
      } catch (cause) {
        damage.add({
          what: "entry",
          place,
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

const ROWS = "SELECT n, kind, lower(hex(hash)), length, codec, packed FROM entry WHERE n >= ? AND n <= ? ORDER BY n";

/** The canonical bytes of each row; empty where they do not unpack, which no hash fits. */
export function bytesOf(rows: readonly StoredRow[]): Buffer[] {
  const packed = rows.filter(([, , , , codec]) => codec === 1);
  const together = unpackMany(
    packed.map((row) => row[5]),
    packed.map((row) => row[3]),
  );
  // One damaged among many may shift all that follow: then each is unpacked by itself.
  if (together === undefined || !together.every(looksWhole)) return rows.map(bytesOfOne);
  let next = 0;
  return rows.map((row) => {
    if (row[4] !== 1) return bytesOfOne(row);
    next += 1;
    return together[next - 1]!;
  });
}

const OPENING = Buffer.from('{"at":"');
const CLOSING = Buffer.from(',"v":1}');

function looksWhole(bytes: Buffer): boolean {
  const end = bytes.length - CLOSING.length;
  return (
    end > 0 && bytes.compare(OPENING, 0, OPENING.length, 0, OPENING.length) === 0 && bytes.indexOf(CLOSING, end) === end
  );
}

const empty = Buffer.alloc(0);

function bytesOfOne([, , , length, codec, packed]: StoredRow): Buffer {
  try {
    return unpackEntry({ codec, packed }, length);
  } catch {
    return empty;
  }
}
