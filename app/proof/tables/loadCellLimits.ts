import data from "./oimlR60.json" with { type: "json" };

export type LoadCellClass = keyof typeof data.stepsInIntervals;

/** Limits at one load, in verification intervals v, without sign. */
export type LoadCellLimits = {
  readonly error: number;
  /** Change since the first reading within 30 min of standing load, and from the 20th to the 30th minute. */
  readonly creep: number;
  readonly lateCreep: number;
  /** Change of the indication at rest after 30 min under load. */
  readonly zeroReturn: number;
};

/**
 * What a load cell of an accuracy class may be off: what a sound strain-gauge force gauge can be held against.
 * @param loadIntervals  the load, in verification intervals
 * @param share  p_LC, the share of the error that is the cell's, 0.3 to 0.8; the creep always counts with 0.7
 * @throws RangeError  a load outside the class, or a share outside its range
 * @see OIML R 60-1:2021, 5.3.2 table 4 (steps from memory), 5.5.1, 5.5.2
 */
export function loadCellLimits(
  accuracy: LoadCellClass,
  loadIntervals: number,
  share: number = data.share,
): LoadCellLimits {
  const ends = data.stepsInIntervals[accuracy];
  if (!(loadIntervals >= 0)) throw new RangeError(`a load lies at or above 0 intervals, got ${loadIntervals}`);
  if (!(share >= 0.3 && share <= 0.8))
    throw new RangeError(`a load cell's share lies between 0.3 and 0.8, got ${share}`);
  const step = ends.findIndex((end) => loadIntervals <= end);
  // Class A has no upper end: what lies beyond its second step counts with the third.
  if (step < 0 && accuracy !== "A")
    throw new RangeError(`class ${accuracy} ends at ${ends.at(-1)} intervals, got ${loadIntervals}`);
  const intervals = step < 0 ? 1.5 : [0.5, 1, 1.5][step]!;
  return {
    error: share * intervals,
    creep: data.creepShare * data.share * intervals,
    lateCreep: data.lateCreepShare * data.share * intervals,
    zeroReturn: data.returnIntervals,
  };
}
