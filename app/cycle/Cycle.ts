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

/** A stretch of rest: the indication of an unloaded gauge, or of a strained one (see `CycleFlag.notReleased`). */
export type Rest = {
  /** Robust mean of the quiet readings, as indicated. */
  readonly indicationN: number;
  /** Its standard uncertainty from its own scatter, autocorrelation counted. */
  readonly standardN: number;
  /** Middle of the readings it was taken from, in places of the stream and in seconds. */
  readonly atIndex: number;
  readonly atS: number | undefined;
  /** How long the gauge had been at rest when the last of them came. */
  readonly restedS: number | undefined;
  /** The zero was set anew since the last cycle: by the user, or by a jump while nothing pressed. */
  readonly reset: boolean;
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
  /** With `overload` a lower bound: the greatest force the gauge still showed. */
  readonly peakN: number;
  readonly peakIndex: number;
  readonly settledN: number | undefined;
  /**
   * Standard uncertainty (k = 1) of the settled force from the scatter of its own readings and of the rest its zero
   * came from, autocorrelation counted, the resolution where it hides the noise. Widened for few readings, so that
   * 1.96 of it hold 95 %. Gauge, adapter and drift are not in it.
   */
  readonly settledUncertaintyN: number | undefined;
  readonly settledWindow: SettledWindow | undefined;
  readonly settledFromS: number | undefined;
  readonly settledToS: number | undefined;
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
  /** The zero that was taken off the indications of this cycle. Gross force = net + this. */
  readonly zeroN: number;
  readonly flags: readonly CycleFlag[];
  /** The part of `settledUncertaintyN` that comes from the hold alone. */
  readonly holdUncertaintyN: number | undefined;
  /** The rests on both sides, true or strained; `zeroSeries` works on them. */
  readonly restBefore: Rest | undefined;
  readonly restAfter: Rest | undefined;
};

/**
 * The readings of one cycle with some rest on both sides, as indicated (zero not taken off). A place without a
 * reading is NaN, an overload line Infinity. In holds too long to keep, a stretch after the settled window is
 * left out: `skipped` places are missing before `values[gapAt]`.
 */
export type Waveform = {
  /** Place of `values[0]` in the stream. */
  readonly fromIndex: number;
  readonly values: Float64Array;
  /** Seconds from the stream's first line; undefined: place over rate, or unknown. */
  readonly times: Float64Array | undefined;
  readonly rateHz: number | undefined;
  readonly gapAt: number;
  readonly skipped: number;
};
