/** A spindle of the round as matching needs it, in the order it was to be walked. */
export type MatchStop = {
  readonly spindleId: string;
  /** The number under which the gauge keeps it. */
  readonly location: string | undefined;
  /** What its next check is expected to show; undefined: nothing is known. */
  readonly expected: Expectation | undefined;
};

/** A force to be expected. */
export type Expectation = {
  readonly forceN: number;
  /** Relative standard deviation from visit to visit. */
  readonly scatter: number;
  /** The same for the next visit against `forceN`: the level is not known exactly either. */
  readonly spread: number;
};
