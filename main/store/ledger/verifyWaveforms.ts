import { type Db, prepared } from "../db.ts";
import { unjoin, type WaveformsRow } from "../records/waveforms.ts";
import { wordsOf } from "../wordsOf.ts";
import type { DamageList } from "./DamageList.ts";
import { seqOf } from "./place.ts";
import type { WaveformTally } from "./WaveformTally.ts";

type Row = WaveformsRow & { readonly n: number };

/**
 * Hashes every waveform and adds it to the tally of what is there; whether these are the hashes the checks name, the
 * tally tells. What cannot be read is named.
 */
export function verifyWaveforms(
  db: Db,
  upTo: number,
  damage: DamageList,
  tally: WaveformTally,
  goOn: () => void,
): void {
  const some = prepared<Row>(db, "SELECT n, cycles, bytes FROM waveform WHERE n > ? AND n <= ? ORDER BY n LIMIT 128");
  for (let after = 0; ; ) {
    goOn();
    const rows = readable(() => some.all(after, upTo), damage);
    if (rows.length === 0) return;
    for (const row of rows) verifyRow(row, damage, tally);
    if (rows.at(-1)!.n <= after) return; // a damaged tree can lead back
    after = rows.at(-1)!.n;
  }
}

function readable<T>(read: () => T[], damage: DamageList): T[] {
  try {
    return read();
  } catch (cause) {
    damage.add({ what: "waveform", fault: "unreadable", detail: `waveforms cannot be read: ${wordsOf(cause)}` });
    return [];
  }
}

function verifyRow(row: Row, damage: DamageList, tally: WaveformTally): void {
  try {
    for (const { cycleId, hash, sampleCount } of unjoin(row)) {
      if (sampleCount < 0) throw new RangeError("not a waveform");
      tally.add(cycleId, hash);
    }
  } catch (cause) {
    damage.add({
      what: "waveform",
      place: row.n,
      fault: "unreadable",
      detail: `waveforms of entry ${seqOf(row.n)}: ${wordsOf(cause)}`,
    });
  }
}
