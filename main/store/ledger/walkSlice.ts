import { ChainWalk } from "../../../app/ledger/ChainWalk.ts";
import { type Db, prepared } from "../db.ts";
import type { DamageList } from "./DamageList.ts";
import { seqOf } from "./place.ts";
import { sha256 } from "./sha256.ts";
import type { Slice } from "./slices.ts";
import { bytesOf, readRows, type StoredRow } from "./storedRows.ts";
import type { WaveformTally } from "./WaveformTally.ts";

/**
 * Walks the entries of a slice: each entry's hash, its place in its origin's chain, and that it names the one before.
 * Slices can be walked in any order and at once, since each begins with the hash stored before it.
 * @returns  how many entries were there
 */
export function walkSlice(db: Db, slice: Slice, damage: DamageList, tally: WaveformTally): number {
  const before = slice.before === undefined ? undefined : { seq: seqOf(slice.before), hash: hashAt(db, slice.before) };
  const walk = new ChainWalk(slice.origin, sha256, before);
  const rows = readRows(db, slice, damage);
  const bytes = bytesOf(rows);
  for (let i = 0; i < rows.length; i += 1) takeRow(rows[i]!, bytes[i]!, walk, damage, tally);
  return rows.length;
}

function hashAt(db: Db, place: number): string {
  return prepared<Buffer>(db, "SELECT hash FROM entry WHERE n = ?").pluck().get(place)?.toString("hex") ?? "";
}

function takeRow(row: StoredRow, bytes: Buffer, walk: ChainWalk, damage: DamageList, tally: WaveformTally): void {
  const [place, kind, hash] = row;
  const seq = seqOf(place);
  const fault = walk.take({ seq, kind, hash, bytes });
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
