import { existsSync, linkSync, renameSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { StoreError } from "../StoreError.ts";
import { syncFolder } from "./copyDatabase.ts";

export type SwapOptions = {
  /** The old file could only be read, so a log may be left beside it: it goes along with the old file. */
  readonly damaged?: boolean;
  /** Gives a file a second name. */
  readonly link?: (from: string, to: string) => void;
};

/**
 * Puts a restored file in the place of the data file, and keeps the old one beside it. Both stores must be closed.
 * At every instant there is a whole data file under the old name: the old one gets its second name first. Where a disk
 * knows no second names (FAT), the old one is moved aside, and back again when the new one cannot be moved in.
 * @returns  where the old file is kept
 * @throws StoreError  `busy` while some program still reads the old file
 */
export function swapIn(restored: string, dataFile: string, nowMs: number, options: SwapOptions = {}): string {
  const { damaged = false, link = linkSync } = options;
  // A log left beside the name would be read into the new file, and ruin it.
  if ((!damaged && existsSync(`${dataFile}-wal`)) || existsSync(`${restored}-wal`)) {
    throw new StoreError(
      "busy",
      "Some program still has the data file open. Close it (a command line, a viewer) and try again; nothing was changed.",
    );
  }
  const stamp = new Date(nowMs).toISOString().slice(0, 19).replace(/[-:]/g, "");
  const kept = join(dirname(dataFile), `before-restore-${stamp}Z.sqlite`);
  const moved = !linked(link, dataFile, kept);
  if (moved) renameSync(dataFile, kept);
  try {
    if (existsSync(`${dataFile}-wal`)) renameSync(`${dataFile}-wal`, `${kept}-wal`);
    rmSync(`${dataFile}-shm`, { force: true });
    renameSync(restored, dataFile);
  } catch (cause) {
    swapBack(kept, dataFile);
    throw cause;
  }
  syncFolder(dirname(dataFile));
  return kept;
}

/** The kept file under its old name again, with its log where it had one. */
export function swapBack(kept: string, dataFile: string): void {
  renameSync(kept, dataFile);
  rmSync(kept, { force: true }); // two names of one file: there a rename does nothing (POSIX)
  if (existsSync(`${kept}-wal`)) renameSync(`${kept}-wal`, `${dataFile}-wal`);
}

function linked(link: (from: string, to: string) => void, from: string, to: string): boolean {
  try {
    link(from, to);
    return true;
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === "EEXIST") throw cause; // a second restore in one second
    return false;
  }
}
