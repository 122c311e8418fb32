import { readlinkSync } from "node:fs";
import { setPriority } from "node:os";

/**
 * Lets the core go first: on Linux a thread can be ranked by itself, and is named in `/proc/thread-self`. Elsewhere,
 * and where it is refused, the thread competes as it is.
 */
export function stepBack(): void {
  if (process.platform !== "linux") return;
  try {
    const thread = Number(readlinkSync("/proc/thread-self").split("/").at(-1));
    if (thread !== process.pid) setPriority(thread, 10);
  } catch {
    // Not ours to change here: slower to answer, no more.
  }
}
