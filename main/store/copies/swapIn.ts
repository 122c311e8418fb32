import { existsSync, linkSync, renameSync } from "node:fs";
import { dirname, join } from "node:path";
import { StoreError } from "../StoreError.ts";
import { syncFolder } from "./copyDatabase.ts";

/**
 * Puts a restored file in the place of the data file, and keeps the old one beside it. Both stores must be closed.
 * At every instant there is a whole data file under the old name: the old one gets its second name first.
 * @returns  where the old file is kept
 * @throws StoreError  `busy` while some program still reads the old file
 */
export function swapIn(restored: string, dataFile: string, nowMs: number): string {
  // A log left beside the name would be read into the new file, and ruin it.
  if (existsSync(`${dataFile}-wal`) || existsSync(`${restored}-wal`)) {
    throw new StoreError(
      "busy",
      "Some program still has the data file open. Close it (a command line, a viewer) and try again; nothing was changed.",
    );
  }
  const stamp = new Date(nowMs).toISOString().slice(0, 19).replace(/[-:]/g, "");
  const kept = join(dirname(dataFile), `before-restore-${stamp}Z.sqlite`);
  linkSync(dataFile, kept);
  renameSync(restored, dataFile);
  syncFolder(dirname(dataFile));
  return kept;
}
