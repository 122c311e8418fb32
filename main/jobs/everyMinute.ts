import type { Clock } from "../link/Clock.ts";

/** Not at once: the first screen comes first. */
const FIRST_MS = 10_000;
const MINUTE_MS = 60_000;

/**
 * Calls again and again, the next time only when the last has ended.
 * @returns  ends it
 */
export function everyMinute(clock: Clock, tick: () => Promise<void>): () => void {
  let ended = false;
  let callOff = clock.after(FIRST_MS, run);
  async function run(): Promise<void> {
    await tick();
    if (!ended) callOff = clock.after(MINUTE_MS, run);
  }
  return () => {
    ended = true;
    callOff();
  };
}
