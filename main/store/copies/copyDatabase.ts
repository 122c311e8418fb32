import { closeSync, fsyncSync, openSync, rmSync, writeSync } from "node:fs";
import { dirname } from "node:path";
import type { Db } from "../db.ts";
import type { Watch } from "../ledger/walkSlices.ts";

/** Pages between two looks at the watch: a quarter of a megabyte. */
const STEP = 64;

/**
 * Copies a data file as it stands at one instant, through SQLite's own backup, while others go on writing to it.
 * What has been copied when it fails is removed.
 * @param db  a reading connection; holds its snapshot until the copy is done
 * @param to  must not exist
 */
export async function copyDatabase(db: Db, to: string, watch: Watch): Promise<void> {
  closeSync(openSync(to, "wx", 0o600)); // this user's alone, and never over something
  db.exec("BEGIN");
  try {
    db.prepare("SELECT count(*) FROM origin").get(); // the snapshot begins with the first read
    await db.backup(to, {
      progress: ({ totalPages, remainingPages }) => {
        watch.goOn();
        watch.progress(totalPages - remainingPages, totalPages);
        return STEP;
      },
    });
    standAlone(to);
    syncFolder(dirname(to));
  } catch (cause) {
    for (const rest of ["", "-journal", "-wal", "-shm"]) rmSync(`${to}${rest}`, { force: true });
    throw cause;
  } finally {
    if (db.inTransaction) db.exec("COMMIT");
  }
}

/**
 * Marks the copy as one without a log beside it (SQLite file format, 1.3: bytes 18 and 19), so that it can be read on
 * a share or a write-protected stick; and makes it last.
 */
function standAlone(path: string): void {
  const fd = openSync(path, "r+");
  try {
    writeSync(fd, Uint8Array.of(1, 1), 0, 2, 18);
    fsyncSync(fd);
  } finally {
    closeSync(fd);
  }
}

/** Makes a new name last. Windows has no such thing, and some shares refuse it: then the name is as safe as it gets. */
export function syncFolder(folder: string): void {
  let fd: number;
  try {
    fd = openSync(folder, "r");
  } catch {
    return;
  }
  try {
    fsyncSync(fd);
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === "EIO") throw cause;
  } finally {
    closeSync(fd);
  }
}
