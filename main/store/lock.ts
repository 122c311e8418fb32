import type { Db } from "./db.ts";
import { StoreError } from "./StoreError.ts";

/**
 * Takes the one right to write a data file: an exclusive transaction on a file beside it. The operating system
 * lets go of it when the process ends, however it ends, so a lock is never left behind.
 * @param sidecar  a connection to `<data file>.lock`, with no waiting time
 * @returns  gives the right back
 * @throws StoreError  `locked`
 */
export function takeLock(sidecar: Db, path: string): () => void {
  try {
    sidecar.exec("BEGIN EXCLUSIVE");
  } catch (cause) {
    sidecar.close();
    if (!/^SQLITE_BUSY/.test(String((cause as { code?: unknown }).code))) throw cause;
    throw new StoreError(
      "locked",
      `Another Holdfast is running with the data file ${path}. Use that one, or close it first; nothing was changed.`,
      cause,
    );
  }
  return () => {
    if (!sidecar.open) return;
    sidecar.exec("ROLLBACK");
    sidecar.close();
  };
}
