import { once } from "node:events";
import type { Writable } from "node:stream";

/** Resolves when a stream can take more, or has ended; leaves no listener behind. */
export async function drainedOrClosed(stream: Writable): Promise<void> {
  const over = new AbortController();
  try {
    await Promise.race(["drain", "close"].map((event) => once(stream, event, { signal: over.signal })));
  } finally {
    over.abort();
  }
}
