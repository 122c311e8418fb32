/** Time for the link, handed in so that a test can turn the hands itself. */
export type Clock = {
  /** Never goes back; orders chunks and feeds the watchdogs. Milliseconds from any start. */
  monotonicMs(): number;
  /** What the wall says, milliseconds since 1970. */
  wallMs(): number;
  /** Calls back once; what it answers calls it off. */
  after(ms: number, call: () => void): () => void;
};

/** The machine's own clocks. A timer alone keeps no program running. */
export const systemClock: Clock = {
  monotonicMs: () => performance.now(),
  wallMs: () => Date.now(),
  after(ms, call) {
    const timer = setTimeout(call, ms);
    timer.unref();
    return () => clearTimeout(timer);
  },
};
