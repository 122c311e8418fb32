import { type Db, prepared } from "../db.ts";
import { sampleCountOf } from "../waveform.ts";
import { sha256 } from "./appendEntries.ts";
import type { DamageList } from "./DamageList.ts";
import type { WaveformTally } from "./WaveformTally.ts";
import type { Slice } from "./walkSlice.ts";
import { wordsOf } from "./walkSlice.ts";

/** cycle_id, hash, sample_count, bytes */
type Row = [string, Buffer, number, Buffer];

/** The waveforms of a slice of their table against their hashes, and into the tally of what is there. */
export function verifyWaveforms(db: Db, { from, to }: Slice, damage: DamageList, tally: WaveformTally): void {
  const one = prepared<Row>(db, "SELECT cycle_id, hash, sample_count, bytes FROM waveform WHERE n = ?").raw();
  for (let n = from + 1; n <= to; n += 1) {
    try {
      const row = one.get(n);
      if (row !== undefined) verifyOne(row, damage, tally);
    } catch (cause) {
      damage.add({ what: "waveform", fault: "unreadable", detail: `the waveform at place ${n}: ${wordsOf(cause)}` });
    }
  }
}

function verifyOne([cycleId, hash, sampleCount, bytes]: Row, damage: DamageList, tally: WaveformTally): void {
  const stored = hash.toString("hex");
  tally.add(cycleId, stored);
  if (sha256(bytes) === stored && sampleCountOf(bytes) === sampleCount) return;
  damage.add({
    what: "waveform",
    fault: "altered",
    detail: `the waveform of cycle ${cycleId} is not the one that was filed`,
  });
}
