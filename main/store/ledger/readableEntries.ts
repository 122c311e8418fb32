import type { Entry } from "../../../app/ledger/entry.ts";
import { envelope } from "../../../app/ledger/entry.ts";
import { GENESIS } from "../../../app/ledger/genesis.ts";
import type { Db } from "../db.ts";
import type { FiledEntry } from "../Store.ts";
import type { DamageList } from "./DamageList.ts";
import { seqOf } from "./place.ts";
import { sha256 } from "./sha256.ts";
import { type Slice, slicesOf } from "./slices.ts";
import { bytesOf, readRows, type StoredRow } from "./storedRows.ts";

/**
 * An entry out of a damaged file. `whole`: it is what was filed, and so is everything before it in its chain; `loose`: it is
 * what was filed, but something before it is not there; `doubtful`: its text can be read and is not what was filed.
 */
export type ReadableEntry = {
  readonly entry: FiledEntry;
  /** As it lies in the file: canonical, unless it is `doubtful`. */
  readonly text: string;
  readonly state: "whole" | "loose" | "doubtful";
};

/** Every entry that can be read at all, in the order of the file; what cannot, or is not what was filed, is named in `damage`. */
export function* readableEntries(db: Db, damage: DamageList): Generator<ReadableEntry> {
  const ends = new Map<string, { seq: number; hash: string }>();
  for (const slice of slicesOf(db)) {
    const rows = readRows(db, slice, damage);
    const bytes = bytesOf(rows);
    nameMissing(slice, rows, damage);
    for (const [i, row] of rows.entries()) {
      const read = entryOf(row, bytes[i]!, slice.origin, damage);
      if (read === undefined) continue;
      const { entry, text, doubtful } = read;
      const end = ends.get(slice.origin) ?? { seq: 0, hash: GENESIS };
      const follows = !doubtful && entry.seq === end.seq + 1 && entry.prev === end.hash;
      if (follows) ends.set(slice.origin, { seq: entry.seq, hash: entry.hash });
      yield { entry, text, state: doubtful ? "doubtful" : follows ? "whole" : "loose" };
    }
  }
}

function entryOf([n, kind, hash]: StoredRow, bytes: Buffer, origin: string, damage: DamageList) {
  const seq = seqOf(n);
  const about = { what: "entry", origin, seq, place: n } as const;
  const altered = sha256(bytes) !== hash;
  const text = bytes.toString("utf8");
  const parsed = parse(text);
  if (parsed === undefined) {
    damage.add({ ...about, fault: "unreadable", detail: `entry ${seq} (${kind}): its bytes are no entry` });
    return undefined;
  }
  const elsewhere = parsed.seq !== seq || parsed.origin !== origin || parsed.kind !== kind;
  const doubtful = altered || elsewhere;
  if (doubtful) {
    damage.add({
      ...about,
      fault: "altered",
      detail: `entry ${seq} (${kind}): its bytes are not those that were filed`,
    });
  }
  const entry: FiledEntry = { ...parsed, hash, n };
  return { entry, text, doubtful };
}

function parse(text: string): Entry | undefined {
  try {
    const read = envelope.safeParse(JSON.parse(text));
    return read.success ? (read.data as Entry) : undefined; // its body is as its kind had it when it was filed
  } catch {
    return undefined;
  }
}

/** Numbers that no row has, and that were not stepped over as unreadable. */
function nameMissing({ from, to, origin }: Slice, rows: readonly StoredRow[], damage: DamageList): void {
  if (rows.length === to - from + 1) return;
  const there = new Set(rows.map(([n]) => seqOf(n)));
  const named = new Set(damage.kept.filter((one) => one.origin === origin).map((one) => one.seq));
  for (let seq = from; seq <= to; seq += 1) {
    if (there.has(seq) || named.has(seq)) continue;
    damage.add({ what: "entry", origin, seq, fault: "missing", detail: `entry ${seq}: it is gone` });
  }
}
