import { readFile } from "node:fs/promises";
import { basename, join } from "node:path";

/**
 * The process that has claimed a serial line by a lock file, if it still lives. Not every program writes one:
 * undefined does not mean free, and opening tells.
 * @see Filesystem Hierarchy Standard 3.0, 5.9 (/var/lock): LCK..ttyS0 holds the process number as ten ASCII digits
 */
export async function lockHolder(path: string, lockFolder: string): Promise<number | undefined> {
  const text = await readFile(join(lockFolder, `LCK..${basename(path)}`), "latin1").catch(() => "");
  const pid = /^\s*(\d{1,10})\s/.exec(text)?.[1];
  if (pid === undefined || Number(pid) === process.pid) return undefined;
  return isAlive(Number(pid)) ? Number(pid) : undefined;
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (cause) {
    return (cause as NodeJS.ErrnoException).code === "EPERM"; // it lives and belongs to somebody else
  }
}
