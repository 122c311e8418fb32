import { writeSync } from "node:fs";
import { loadDraft, saveDraft } from "../../../main/store/draft.ts";
import { openStore } from "../../../main/store/open.ts";
import type { EntryDraft, Store } from "../../../main/store/Store.ts";
import { encodeWaveformNow } from "../../../main/store/waveform.ts";
import { aCheck, idOf } from "../aCheck.ts";
import { aSpindle } from "../aSpindle.ts";

/**
 * A program to be killed: files checks with waveforms as fast as it can, each batch with the draft that counts them,
 * and says each number on standard output once `append` has answered. Goes on where an earlier one was killed.
 */
function run(path: string): void {
  const store = openStore({ path, now: Date.now, machine: "bench" });
  if (store.lastPlace() === 0) store.append([{ kind: "spindle", body: aSpindle() }]);
  const done = loadDraft(store.db)?.spoolPosition ?? 0;
  writeSync(1, "open\n");
  for (let i = done + 1; ; i += 1) {
    fileOne(store, i);
    writeSync(1, `${i}\n`);
    if (i % 7 === 0) store.tidy();
    if (i % 11 === 0) store.signHeads();
  }
}

/** Check `i`; every fifth time the one before is voided in the same batch. The draft says `i`. */
function fileOne(store: Store, i: number): void {
  const measuredAt = new Date(1_700_000_000_000 + i * 60_000).toISOString();
  const body = aCheck({ seed: i, cycleCount: 2, measuredAt });
  const forceN = Float64Array.from({ length: 50 }, (_, k) => 24_000 + k + i);
  const waveform = encodeWaveformNow(body.cycles[0]!.cycleId, { fromIndex: 0, forceN, time: undefined });
  body.cycles[0]!.waveformHash = waveform.hash;
  const batch: EntryDraft[] = [{ kind: "check", body }];
  if (i % 5 === 0) {
    const checkId = aCheck({ seed: i - 1 }).checkId;
    batch.push({ kind: "void", body: { checkId, reason: "wrong adapter", operatorId: idOf(4) } });
  }
  const alsoInTransaction = (db: Store["db"]) => saveDraft(db, { body: { i }, spoolPosition: i, savedAtMs: i });
  store.append(batch, { waveforms: [waveform], alsoInTransaction });
}

run(process.argv[2]!);
