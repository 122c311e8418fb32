import { type Db, prepared } from "../db.ts";
import type { DamageList } from "./DamageList.ts";
import { verifyWaveforms } from "./verifyWaveforms.ts";
import { type TallySums, WaveformTally } from "./WaveformTally.ts";
import { SLICE, walkSlice } from "./walkSlice.ts";

export type Walked = {
  readonly entries: number;
  /** Waveforms as the checks name them, and as the table has them. */
  readonly named: TallySums;
  readonly kept: TallySums;
};

type Watch = { readonly progress: (done: number, total: number) => void; readonly goOn: () => void };

/**
 * Walks slices of the ledger and of the waveform table until none is left. Several threads can walk at once.
 * @param next  one 32-bit number they share: the slice to be taken next
 */
export function walkSlices(db: Db, next: SharedArrayBuffer, damage: DamageList, watch: Watch): Walked {
  const counter = new Int32Array(next);
  const named = new WaveformTally();
  const kept = new WaveformTally();
  const entrySlices = slicesOf(db, "entry");
  const slices = entrySlices + slicesOf(db, "waveform");
  let entries = 0;
  for (let i = Atomics.add(counter, 0, 1); i < slices; i = Atomics.add(counter, 0, 1)) {
    watch.goOn();
    const at = (i < entrySlices ? i : i - entrySlices) * SLICE;
    const slice = { from: at, to: at + SLICE };
    if (i < entrySlices) entries += walkSlice(db, slice, damage, named);
    else verifyWaveforms(db, slice, damage, kept);
    watch.progress(i + 1, slices);
  }
  return { entries, named: named.sums, kept: kept.sums };
}

function slicesOf(db: Db, table: "entry" | "waveform"): number {
  return Math.ceil((prepared<number | null>(db, `SELECT max(n) FROM ${table}`).pluck().get() ?? 0) / SLICE);
}
