import { type Db, prepared } from "../db.ts";
import { sha256 } from "../ledger/sha256.ts";
import type { WaveformRow } from "../Store.ts";
import { sampleCountOf } from "../waveform.ts";

/** Which stretch of a row's bytes is whose: cycle and length, in order. */
export type Stretch = readonly [cycleId: string, length: number];

/** The packed readings of a check's cycle, for `decodeWaveform`; undefined when none were kept. @param place  the check's */
export function readWaveform(db: Db, place: number, cycleId: string): WaveformRow | undefined {
  const row = prepared<WaveformsRow>(db, "SELECT cycles, bytes FROM waveform WHERE n = ?").get(place);
  return row && unjoin(row).find((waveform) => waveform.cycleId === cycleId);
}

/** Which cycles of a check have a waveform here. @param place  the check's */
export function cyclesWithWaveform(db: Db, place: number): string[] {
  const cycles = prepared<string>(db, "SELECT cycles FROM waveform WHERE n = ?").pluck().get(place);
  return cycles === undefined ? [] : stretches(cycles).map(([cycleId]) => cycleId);
}

/** Files a check's waveforms in one row; `append` does it in the transaction of the check that names their hashes. */
export function insertWaveforms(db: Db, place: number, waveforms: readonly WaveformRow[]): void {
  if (waveforms.length === 0) return;
  const cycles = JSON.stringify(waveforms.map(({ cycleId, bytes }) => [cycleId, bytes.length]));
  const bytes = Buffer.concat(waveforms.map((w) => w.bytes));
  prepared(db, "INSERT INTO waveform (n, cycles, bytes) VALUES (?, ?, ?)").run(place, cycles, bytes);
}

export type WaveformsRow = { readonly cycles: string; readonly bytes: Buffer };

/** @throws  the row is damaged */
export function unjoin({ cycles, bytes }: WaveformsRow): WaveformRow[] {
  let at = 0;
  const found = stretches(cycles).map(([cycleId, length]) => {
    const own = bytes.subarray(at, at + length);
    at += length;
    return { cycleId, bytes: own, hash: sha256(own), sampleCount: sampleCountOf(own) ?? -1 };
  });
  if (at !== bytes.length) throw new RangeError(`waveforms of ${at} bytes in a row of ${bytes.length}`);
  return found;
}

const stretches = (cycles: string) => JSON.parse(cycles) as Stretch[]; // `insertWaveforms` wrote it
