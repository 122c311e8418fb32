import { existsSync, readFileSync, statSync } from "node:fs";
import { StoreError } from "./StoreError.ts";

/** More is not read into memory. */
const MOST = 1024 * 1024 * 1024;

/**
 * A data file on a medium that cannot be written, whole: SQLite cannot lay its shared memory beside it there. Marked
 * as a file without a log (SQLite file format, 1.3: bytes 18 and 19).
 * @throws StoreError  there is a log beside it, or it is too large: it has to be copied to a disk first
 */
export function readWhole(path: string): Buffer {
  const log = `${path}-wal`;
  if ((existsSync(log) && statSync(log).size > 0) || statSync(path).size > MOST) {
    throw new StoreError(
      "readOnly",
      `${path} cannot be read where it lies, since nothing can be written beside it. Copy it, and the files beside it whose ` +
        "names begin the same, to a folder on a disk, and open it there.",
    );
  }
  const bytes = readFileSync(path);
  if (bytes.length >= 20) bytes.set([1, 1], 18);
  return bytes;
}
