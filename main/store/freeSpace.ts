import { statfsSync } from "node:fs";

/** Bytes this user may still write in a folder; undefined where the system does not say. */
export function freeBytes(folder: string): number | undefined {
  try {
    const { bavail, bsize } = statfsSync(folder);
    return bavail * bsize;
  } catch {
    return undefined;
  }
}
