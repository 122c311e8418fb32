import { curveAt } from "./curveAt.ts";
import type { GaugeCurve } from "./GaugeCurve.ts";

/** What stands between a net indication and the force at the taper, as it was on the day. */
export type Corrections = {
  /** Absent: the gauge was never proved, and its indication is taken for the force. */
  readonly curve?: GaugeCurve | undefined;
  /** Force at the taper over force at the gauge. Absent: no adapter is on record. */
  readonly adapter?: { readonly scale: number; readonly version: number } | undefined;
};

/** Every step of a correction, kept with the check. */
export type CorrectedForce = {
  readonly indicationN: number;
  readonly zeroN: number;
  readonly netN: number;
  /** By the gauge's curve; the net indication where there is none. */
  readonly curvedN: number;
  readonly curveVersion: number | undefined;
  readonly adapterScale: number;
  readonly adapterVersion: number | undefined;
  /** At the taper. */
  readonly correctedN: number;
  /** Newtons at the taper per newton of net indication: what turns an uncertainty of a reading into one of the force. */
  readonly sensitivity: number;
  /** The net indication lies outside what the proof covered; the curve was carried on. */
  readonly outsideProof: boolean;
};

/**
 * From an indication to the force at the taper: less the zero, through the gauge's curve, times the adapter's scale.
 * @param indicationN  as the gauge showed it, newtons
 * @param zeroN  its indication at rest, newtons
 * @throws RangeError  a reading or zero that is not finite, or an adapter whose scale is not above zero
 */
export function correctForce(indicationN: number, zeroN: number, { curve, adapter }: Corrections): CorrectedForce {
  const scale = adapter?.scale ?? 1;
  if (!(scale > 0 && scale < Infinity)) throw new RangeError(`an adapter's scale must be above zero, got ${scale}`);
  const netN = indicationN - zeroN;
  const { forceN, slope } = curveAt(curve ?? asIndicated, netN);
  return {
    indicationN,
    zeroN,
    netN,
    curvedN: forceN,
    curveVersion: curve?.version,
    adapterScale: scale,
    adapterVersion: adapter?.version,
    correctedN: scale * forceN,
    sensitivity: scale * slope,
    outsideProof: curve !== undefined && (netN < curve.fromN || netN > curve.toN),
  };
}

const asIndicated = Object.freeze({ coefficients: Object.freeze([0, 1]) });
