import type { Check } from "../../../app/ledger/check.ts";
import type { WaveformRow } from "../Store.ts";
import type { CheckedDraft } from "./appendEntries.ts";

/**
 * A check and its waveforms are filed together or not at all: what later could not be told from a lost waveform is
 * refused now.
 * @throws RangeError  a hash is named and its waveform not there, or the other way round
 */
export function matchNamed(drafts: readonly CheckedDraft[], waveforms: readonly WaveformRow[]): void {
  const given = new Map(waveforms.map((w) => [w.cycleId, w.hash]));
  for (const { cycleId, waveformHash } of drafts.flatMap(cyclesOf)) {
    if (waveformHash === null) continue;
    if (given.get(cycleId) !== waveformHash)
      throw new RangeError(`cycle ${cycleId} names a waveform that is not filed with it`);
    given.delete(cycleId);
  }
  for (const cycleId of given.keys())
    throw new RangeError(`no check filed here names the waveform of cycle ${cycleId}`);
}

function cyclesOf({ kind, body }: CheckedDraft): Check["cycles"] {
  if (kind === "check") return (body as Check).cycles;
  return kind === "replacement" ? (body as { by: Check }).by.cycles : [];
}
