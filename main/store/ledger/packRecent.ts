import { type Db, prepared } from "../db.ts";
import { packEntry } from "./packEntry.ts";
import { allRuns, placeOf } from "./place.ts";

/** How far back a start looks for entries that the last session had no time to pack. */
const BACK = 256;

type Row = { n: number; packed: Buffer };

/**
 * Packs entries that were filed as they were, newest run only and not far back: housekeeping for idle moments. The
 * canonical bytes, and with them hash and chain, stay what they are. The caller holds the transaction.
 * @returns  how many were packed
 */
export function packRecent(db: Db): number {
  const run = allRuns(db).at(-1);
  if (run === undefined) return 0;
  const rows = prepared<Row>(
    db,
    `SELECT n, packed FROM (SELECT n, length, codec, packed FROM entry WHERE n >= ? ORDER BY n DESC LIMIT ?)
     WHERE codec = 0 AND length >= 512`,
  ).all(placeOf(run.n, 0), BACK);
  let packedCount = 0;
  for (const { n, packed: plain } of rows) {
    const { codec, packed } = packEntry(plain);
    if (codec === 0) continue;
    prepared(db, "UPDATE entry SET codec = ?, packed = ? WHERE n = ?").run(codec, packed, n);
    packedCount += 1;
  }
  return packedCount;
}
