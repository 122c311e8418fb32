import type { Check } from "../../../app/ledger/check.ts";
import type { WaveformRow } from "../Store.ts";
import type { CheckedDraft } from "./checkDrafts.ts";

/**
 * A check and its waveforms are filed together or not at all: what later could not be told from a lost waveform is
 * refused now.
 * @returns  by number of draft in the batch: the waveforms its check names
 * @throws RangeError  a hash is named and its waveform not there, or the other way round
 */
export function matchNamed(
  drafts: readonly CheckedDraft[],
  waveforms: readonly WaveformRow[],
): Map<number, WaveformRow[]> {
  const given = new Map(waveforms.map((w) => [w.cycleId, w]));
  const matched = new Map<number, WaveformRow[]>();
  for (const [i, draft] of drafts.entries()) {
    for (const { cycleId, waveformHash } of cyclesOf(draft)) {
      if (waveformHash === null) continue;
      const waveform = given.get(cycleId);
      if (waveform?.hash !== waveformHash)
        throw new RangeError(`cycle ${cycleId} names a waveform that is not filed with it`);
      given.delete(cycleId);
      const own = matched.get(i);
      if (own === undefined) matched.set(i, [waveform]);
      else own.push(waveform);
    }
  }
  for (const cycleId of given.keys())
    throw new RangeError(`no check filed here names the waveform of cycle ${cycleId}`);
  return matched;
}

function cyclesOf({ kind, body }: CheckedDraft): Check["cycles"] {
  if (kind === "check") return (body as Check).cycles;
  return kind === "replacement" ? (body as { by: Check }).by.cycles : [];
}
