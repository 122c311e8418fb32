/**
 * What a budget says of where the true force may lie about the value, in a form a probability can be read from fast:
 * Student's t for the repeats (and for a proof of few readings), up to two rectangles that matter, and the rest as a bell
 * with its departure from one.
 */
export type Spread = {
  /** None, one or two. */
  readonly ts: readonly { readonly scaleN: number; readonly degreesOfFreedom: number }[];
  /** Half-widths, newtons, the wider first. */
  readonly rectanglesN: readonly number[];
  readonly restVarianceN2: number;
  /** Fourth cumulant of the rest: 0 for a bell, negative for rectangles. */
  readonly restCumulantN4: number;
};
