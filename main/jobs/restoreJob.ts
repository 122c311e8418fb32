import { z } from "zod";
import type { RestoreTried } from "../../app/contract/backupViews.ts";
import { besideBackup } from "../store/copies/besideBackup.ts";
import { restore } from "../store/copies/restore.ts";
import type { Db } from "../store/db.ts";
import { lastEntry } from "../store/ledger/readEntry.ts";
import { openReader } from "../store/openReader.ts";
import { defineJob } from "./Job.ts";

const path = z.string().min(1).max(1_000);

/** Restores a backup to a new place, compared with the open file and ready to be swapped in. */
export const job = defineJob({
  args: z.strictObject({ from: path, to: path, operatorId: z.uuidv7().optional(), atMs: z.number().optional() }),
  async run({ from, to, operatorId, atMs }, { db, demo, progress, goOn }): Promise<RestoreTried> {
    const newestAt = newestIn(from);
    const { entries, waveforms } = await restore({
      from,
      to,
      demo,
      now: () => atMs ?? Date.now(),
      watch: { progress, goOn },
      operatorId,
    });
    return { file: to, from, entries, waveforms, newestAt, ...beside(db, to) };
  },
});

function newestIn(from: string): string | undefined {
  try {
    const backup = openReader(from);
    try {
      return lastEntry(backup)?.at;
    } finally {
      backup.close();
    }
  } catch {
    return undefined; // restoring it will say what is wrong
  }
}

/** A damaged open file is what one restores for: then nothing is said of it. */
function beside(open: Db, to: string): Pick<RestoreTried, "chains" | "lost" | "lostChecks"> {
  const restored = openReader(to);
  try {
    return besideBackup(open, restored);
  } catch {
    return { chains: [], lost: undefined, lostChecks: undefined };
  } finally {
    restored.close();
  }
}
