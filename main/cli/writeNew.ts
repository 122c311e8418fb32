import { writeFileSync } from "node:fs";
import { faultOf } from "../store/faults.ts";
import { UsageError } from "./Command.ts";

/**
 * Writes a file that a command has made; one that is there is written over, as the user named it.
 * @throws UsageError  the disk refuses
 */
export function writeNew(path: string, bytes: Uint8Array | string): void {
  try {
    writeFileSync(path, bytes);
  } catch (cause) {
    if (faultOf(cause) === undefined && (cause as NodeJS.ErrnoException).code !== "EISDIR") throw cause;
    throw new UsageError(`${path} cannot be written: ${(cause as Error).message}`);
  }
}
