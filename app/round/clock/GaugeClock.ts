/** Both clocks looked at in one moment, ms since 1970 as each of them has it. */
export type ClockSight = { readonly gaugeMs: number; readonly pcMs: number };

/** What a gauge's clock is off by. */
export type GaugeClock = {
  readonly seen: ClockSight;
  /** Gauge minus PC, ms, at the moment it was seen: positive is ahead. */
  readonly offsetMs: number;
  /** What it gains against the PC, parts per million; undefined: seen once only or within a day, or set in between. */
  readonly driftPpm: number | undefined;
  /** It was set, or lost its time, since it was last seen: it had moved farther than any clock drifts. */
  readonly setSince: boolean;
};
