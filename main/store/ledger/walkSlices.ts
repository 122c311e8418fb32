import type { Db } from "../db.ts";
import type { DamageList } from "./DamageList.ts";
import { slicesOf } from "./slices.ts";
import { verifyWaveforms } from "./verifyWaveforms.ts";
import { type TallySums, WaveformTally } from "./WaveformTally.ts";
import { walkSlice } from "./walkSlice.ts";

export type Walked = {
  readonly entries: number;
  /** Waveforms as the checks name them, and as the table has them. */
  readonly named: TallySums;
  readonly kept: TallySums;
};

/** What threads that walk together share. */
export type Work = {
  /** One 32-bit number: what is to be taken next; 0 is the waveforms, the slices follow. */
  readonly next: SharedArrayBuffer;
  /** The last place that was filed when the walk began. */
  readonly upTo: number;
  readonly waveformsUpTo: number;
};

export type Watch = { readonly progress: (done: number, total: number) => void; readonly goOn: () => void };

/**
 * Walks the waveforms and the slices of the ledger until none is left. Several threads can walk at once.
 */
export function walkSlices(db: Db, { next, upTo, waveformsUpTo }: Work, damage: DamageList, watch: Watch): Walked {
  const counter = new Int32Array(next);
  const named = new WaveformTally();
  const kept = new WaveformTally();
  const slices = slicesOf(db, upTo);
  let entries = 0;
  for (let i = Atomics.add(counter, 0, 1); i <= slices.length; i = Atomics.add(counter, 0, 1)) {
    watch.goOn();
    if (i === 0) verifyWaveforms(db, waveformsUpTo, damage, kept, watch.goOn);
    else entries += walkSlice(db, slices[i - 1]!, damage, named);
    watch.progress(i, slices.length);
  }
  return { entries, named: named.sums, kept: kept.sums };
}
