import { loadDraft } from "../../../main/store/draft.ts";
import { verifyFile } from "../../../main/store/ledger/verifyFile.ts";
import { openStore } from "../../../main/store/open.ts";
import { readCheck } from "../../../main/store/records/checks.ts";
import { readWaveform } from "../../../main/store/records/waveforms.ts";
import type { Store } from "../../../main/store/Store.ts";
import { aCheck } from "../aCheck.ts";

/**
 * What must hold of a file whose writer was stopped at any moment: all that was acknowledged is there, nothing is half
 * there, and a whole walk finds nothing.
 * @param acknowledged  the greatest number the writer said
 * @returns  what does not hold, in words
 */
export async function checkAfterKill(path: string, acknowledged: number): Promise<string[]> {
  const store = openStore({ path, now: Date.now, machine: "bench" });
  try {
    if (store.refusal !== undefined) return [`opens only for reading: ${store.refusal.message}`];
    const faults = wholeness(store, acknowledged);
    const { damaged } = await verifyFile(store.db, { rebuild: true });
    return [...faults, ...damaged.map(({ what, detail }) => `${what}: ${detail}`)];
  } finally {
    store.close();
  }
}

function wholeness(store: Store, acknowledged: number): string[] {
  const last = loadDraft(store.db)?.spoolPosition ?? 0;
  const faults = last < acknowledged ? [`${acknowledged} were acknowledged, the draft counts ${last}`] : [];
  for (let i = 1; i <= last + 1; i += 1) {
    const filed = readCheck(store.db, aCheck({ seed: i }).checkId);
    if ((filed !== undefined) !== i <= last)
      faults.push(`check ${i} of ${last} is ${filed === undefined ? "missing" : "there"}`);
    if (filed === undefined) continue;
    const { cycleId, waveformHash } = filed.check.cycles[0]!;
    if (readWaveform(store.db, filed.summary.place, cycleId)?.hash !== waveformHash)
      faults.push(`check ${i} has lost its waveform`);
    const voided = (i + 1) % 5 === 0 && i + 1 <= last;
    if ((filed.summary.voided !== undefined) !== voided) faults.push(`check ${i} ${voided ? "is not" : "is"} voided`);
  }
  return faults;
}
