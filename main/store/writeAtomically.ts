import { closeSync, fsyncSync, openSync, renameSync, rmSync, writeSync } from "node:fs";

/**
 * Replaces a small file in one step: whoever reads it, and whenever the power fails, finds the old or the new one
 * whole. Readable by this user alone.
 */
export function writeAtomically(path: string, text: string): void {
  const part = `${path}.${process.pid}.part`;
  const fd = openSync(part, "w", 0o600);
  try {
    try {
      writeSync(fd, text);
      fsyncSync(fd);
    } finally {
      closeSync(fd);
    }
    renameSync(part, path);
  } catch (cause) {
    rmSync(part, { force: true });
    throw cause;
  }
}
