/** What weakens a cycle. Each has its words on the screen; see `DEVELOPERS.md`, "Flags". */
export type CycleFlag =
  | "overload" // the gauge said so, or readings stood at its capacity
  | "unstable" // a step of 2 % or more inside the hold
  | "spike" // at least one single-sample spike was left out
  | "notReleased" // residual force after the release; never becomes a zero
  | "peakHold" // the gauge sent its held maximum: no settled force exists
  | "short" // fewer than eight readings from 1 s on: the steady end was used
  | "coarse" // under 16 readings a ring period: the true peak cannot be seen
  | "cut"; // the link was lost, or the stream began or ended, inside the cycle

/** The stretch of readings the settled force was taken from; kept with the check, so holds of different length compare. */
export type SettledWindow = {
  readonly fromIndex: number;
  readonly toIndex: number; // last reading of it
  readonly n: number;
  readonly effectiveN: number; // after autocorrelation
};

/**
 * One clamping. Forces in newtons, net of zero unless the name says otherwise; times in seconds from the
 * stream's first line, undefined when neither stamp nor rate is known. Indices count the stream's places in
 * time (readings and rejected lines) from 0. Every number is finite; what does not exist is undefined.
 */
export type Cycle = {
  readonly startIndex: number;
  readonly endIndex: number;
  readonly startS: number | undefined;
  readonly endS: number | undefined;
  readonly peakN: number;
  readonly peakIndex: number;
  readonly settledN: number | undefined;
  /** Standard uncertainty (k = 1) of the settled force from its own readings, autocorrelation counted. */
  readonly settledUncertaintyN: number | undefined;
  readonly settledWindow: SettledWindow | undefined;
  /** (peak - settled) / settled, a fraction. */
  readonly overshoot: number | undefined;
  /** 10 % to 90 % of the force that arrived. */
  readonly riseTimeS: number | undefined;
  /** Standard deviation of the readings in the settled window. */
  readonly noiseN: number | undefined;
  readonly slopeNPerS: number | undefined;
  /** Change over the settled window by the fit to log time, as a fraction of the settled force. */
  readonly creep: number | undefined;
  /** Indications at rest, with sign; undefined where there was no rest. */
  readonly zeroBeforeN: number | undefined;
  readonly zeroAfterN: number | undefined;
  /** The zero that was taken off the indications of this cycle. */
  readonly zeroN: number;
  readonly flags: readonly CycleFlag[];
};
