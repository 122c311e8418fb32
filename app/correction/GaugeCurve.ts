/**
 * What a proof says of a gauge: net indication to force, both in newtons, as a polynomial from the constant term up,
 * with the relative standard uncertainty (k = 1) of the force at some net indications, linear between them.
 */
export type GaugeCurve = {
  readonly version: number;
  readonly coefficients: readonly number[];
  /** The net indications the proof covered. */
  readonly fromN: number;
  readonly toN: number;
  readonly uncertainty: readonly { readonly atN: number; readonly relative: number }[];
};
