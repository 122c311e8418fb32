import type { AppendExtra, EntryDraft, Store, WaveformRow } from "../../../main/store/Store.ts";
import { encodeWaveformNow } from "../../../main/store/waveform.ts";
import { aCheck, invented } from "../../support/aCheck.ts";
import { aSpindle } from "../../support/aSpindle.ts";

/** Clampings of one check: the trade takes three to five. */
export const CYCLES = 4;

export type CheckToFile = {
  readonly draft: EntryDraft;
  readonly extra: AppendExtra;
  readonly waveforms: readonly WaveformRow[];
};

/** Files the spindles the checks are for. */
export function fileSpindles(store: Store, count: number): string[] {
  const ids = Array.from({ length: count }, () => store.newId());
  store.append(ids.map((spindleId, i) => ({ kind: "spindle", body: aSpindle({ spindleId, name: `Larch ${i}` }) })));
  return ids;
}

/** A check as it is after a series: its waveforms were compressed when the cycles closed. @param waved  whether it has any */
export function checkToFile(store: Store, spindles: readonly string[], i: number, waved: boolean): CheckToFile {
  const measuredAt = new Date(1_700_000_000_000 + i * 60_000).toISOString();
  const spindleId = spindles[i % spindles.length]!;
  const body = aCheck({ seed: i, cycleCount: CYCLES, checkId: store.newId(), spindleId, measuredAt });
  const waveforms = waved ? body.cycles.map((cycle, k) => waveformOf(cycle, i * CYCLES + k)) : [];
  return { draft: { kind: "check", body }, extra: { waveforms }, waveforms };
}

/** Seven seconds at 100 Hz in steps of 10 N with noise, as a hand gauge sends them. */
function waveformOf(cycle: { cycleId: string; waveformHash: string | null }, seed: number): WaveformRow {
  const next = invented(seed);
  const forceN = Float64Array.from(
    { length: 700 },
    (_, i) => 10 * Math.round(2400 * (1 - Math.exp(-i / 12)) + 6 * (next() - 0.5)),
  );
  const waveform = encodeWaveformNow(cycle.cycleId, { fromIndex: 0, forceN, time: { startS: 0, stepS: 0.01 } });
  cycle.waveformHash = waveform.hash;
  return waveform;
}
