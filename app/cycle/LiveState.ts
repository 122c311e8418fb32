/** What the screen shows between two cycles: where the force stands now. */
export type LiveState = {
  readonly word: "none" | "atRest" | "rising" | "holding" | "falling" | "overload" | "held";
  /** Net of the zero that stands; undefined before there is one, and in overload. */
  readonly forceN: number | undefined;
  /** As the gauge showed it; undefined before the first reading, and in overload. */
  readonly indicationN: number | undefined;
  readonly zeroN: number | undefined;
  /** Greatest net reading of the cycle in work, or of the last one while at rest. */
  readonly greatestN: number | undefined;
  readonly holdingS: number | undefined;
  /** Places so far: readings and rejected lines. */
  readonly places: number;
  /** The cycle in work: where it began. */
  readonly cycleFromIndex: number | undefined;
};
