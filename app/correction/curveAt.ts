import type { GaugeCurve } from "./GaugeCurve.ts";

export type CurvePoint = {
  readonly forceN: number;
  /** Newtons of force per newton of net indication. */
  readonly slope: number;
};

/**
 * The force a gauge's curve gives for a net indication, by Horner's rule with the slope beside it.
 * @param curve  fitted on net readings, so that no zero is taken off twice
 * @param netN  net indication, newtons; outside the proof's range the polynomial goes on, and the caller says so
 * @throws RangeError  a curve without coefficients, or an indication that is not finite
 * @see ISO 376:2011 7.4 (interpolation by a polynomial); NIST/SEMATECH e-Handbook 4.6.1 (load cell calibration)
 */
export function curveAt(curve: Pick<GaugeCurve, "coefficients">, netN: number): CurvePoint {
  if (curve.coefficients.length === 0) throw new RangeError("curveAt requires at least one coefficient");
  if (!Number.isFinite(netN)) throw new RangeError(`curveAt requires a finite indication, got ${netN}`);
  let forceN = 0;
  let slope = 0;
  for (const c of curve.coefficients.toReversed()) {
    slope = slope * netN + forceN;
    forceN = forceN * netN + c;
  }
  return { forceN, slope };
}
