/**
 * One line of an uncertainty budget (JCGM 100 clause 8, table H.1 in layout). A source may have two lines: the zero has
 * one for its noise and one for a change that could not be shared out over the cycles.
 */
export type Contribution = {
  readonly source:
    | "repeatability"
    | "holdNoise"
    | "resolution"
    | "zero"
    | "gaugeProof"
    | "adapter"
    | "temperature"
    | "drift"
    | "misalignment";
  readonly type: "A" | "B";
  readonly distribution: "normal" | "rectangular" | "triangular" | "t";
  /** Standard uncertainty at the taper, newtons, k = 1. */
  readonly standardN: number;
  /** Infinity where the value is taken as known; JSON carries null. */
  readonly degreesOfFreedom: number;
  /** True when the figure is a default nobody has confirmed for this works. */
  readonly assumed: boolean;
};

export type Budget = {
  readonly contributions: readonly Contribution[];
  readonly standardN: number;
  readonly degreesOfFreedom: number;
  readonly coverageFactor: number;
  readonly coverage: number; // probability, 0.95
  readonly expandedN: number;
  /** The source with the greatest share of the variance, all its lines together. */
  readonly dominant: Contribution["source"];
};
