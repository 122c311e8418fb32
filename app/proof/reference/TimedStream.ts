/** Readings of one instrument with their times, oldest first. Times rise; both arrays have the same length. */
export type TimedStream = {
  readonly tS: ArrayLike<number>;
  readonly value: ArrayLike<number>;
};
