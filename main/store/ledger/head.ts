import { GENESIS } from "../../../app/ledger/genesis.ts";
import { type Db, prepared } from "../db.ts";
import { allRuns, lastPlace, seqOf } from "./place.ts";

/** The end of an origin's chain: number and hash of its last entry, `GENESIS` while it has none. */
export type Head = { readonly seq: number; readonly hash: string };

export function headOf(db: Db, originN: number): Head {
  for (const run of allRuns(db).toReversed()) {
    const last = run.origin_n === originN ? lastPlace(db, run.n) : undefined;
    if (last !== undefined) return { seq: seqOf(last), hash: hashAt(db, last) };
  }
  return { seq: 0, hash: GENESIS };
}

function hashAt(db: Db, place: number): string {
  return prepared<Buffer>(db, "SELECT hash FROM entry WHERE n = ?").pluck().get(place)!.toString("hex"); // just found
}
