import type { Clock } from "./Clock.ts";

/** Hands a block on in slices, in time; resolves when all of it has gone. */
export type Pace = (block: Uint8Array, take: (slice: Uint8Array) => void) => Promise<void>;

/** Whole blocks as fast as they are taken, with a turn of the event loop after each so that nothing else starves. */
export function freely(): Pace {
  return async (block, take) => {
    take(block);
    await new Promise((resolve) => setImmediate(resolve));
  };
}

/** So many lines a second, twenty slices a second. What a slow moment has held up is caught up with. */
export function paced(rateHz: number, clock: Clock): Pace {
  if (!(rateHz > 0)) throw new RangeError(`paced requires a rate above zero, got ${rateHz}`);
  const linesAtOnce = Math.max(1, Math.round(rateHz / 20));
  let startMs: number | undefined;
  let lines = 0;
  let inEnd = false; // the last byte was a line end: CR LF is one
  return async (block, take) => {
    startMs ??= clock.monotonicMs();
    let from = 0;
    let due = lines + linesAtOnce;
    for (let at = 0; at < block.length; at += 1) {
      const isEnd = block[at] === 0x0a || block[at] === 0x0d;
      if (isEnd && !inEnd) lines += 1;
      inEnd = isEnd;
      if (lines < due) continue;
      take(block.subarray(from, at + 1));
      from = at + 1;
      due = lines + linesAtOnce;
      await until(startMs + (lines / rateHz) * 1_000, clock);
    }
    if (from < block.length) take(block.subarray(from));
  };
}

function until(dueMs: number, clock: Clock): Promise<void> {
  const waitMs = dueMs - clock.monotonicMs();
  return waitMs <= 0
    ? new Promise((resolve) => setImmediate(resolve))
    : new Promise((resolve) => clock.after(waitMs, () => resolve()));
}
