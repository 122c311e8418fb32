import { statfsSync } from "node:fs";
import { dirname } from "node:path";
import { StoreError } from "./StoreError.ts";

/** What must be left on the disk before anything is filed: room for the log to be written back, and for leaving in order. */
const RESERVE = 2 * 1024 * 1024;

/**
 * Stops accepting before the disk is quite full.
 * @throws StoreError  `full`
 */
export function refuseWhenFull(path: string): void {
  const free = freeBytes(dirname(path));
  if (free === undefined || free >= RESERVE) return;
  throw new StoreError(
    "full",
    `The disk that holds the data file is full (${Math.floor(free / 1024)} KB left). Nothing of this was filed; what was filed before ` +
      "is safe. Make room on the disk and accept again.",
  );
}

/** Bytes this user may still write in a folder; undefined where the system does not say. */
export function freeBytes(folder: string): number | undefined {
  try {
    const { bavail, bsize } = statfsSync(folder);
    return bavail * bsize;
  } catch {
    return undefined;
  }
}
