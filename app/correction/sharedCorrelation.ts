import type { Contribution } from "./Budget.ts";

/** What a filed check says of its own uncertainty, and by which corrections it came about. */
export type UncertainForce = {
  readonly contributions: readonly Contribution[];
  /** Gauge and version of its curve, such as an id and a number in one text; undefined without a curve. */
  readonly curve: string | undefined;
  /** The same for the adapter. */
  readonly adapter: string | undefined;
};

/**
 * Correlation of the errors of two corrected forces, for the uncertainty of their ratio. Only a scale error both have
 * in common cancels: that of the gauge's curve where both used the same version of it, and that of the adapter likewise.
 * Zero, drift since the proof, temperature, seating and repeatability never do.
 * @returns  0 to 1; 0 when either has no uncertainty at all
 * @see JCGM 100:2008 (GUM) 5.2.2 eq. 16, F.1.2.3 (covariance from a shared input)
 */
export function sharedCorrelation(one: UncertainForce, other: UncertainForce): number {
  const sameCurve = one.curve !== undefined && one.curve === other.curve;
  const sameAdapter = one.adapter !== undefined && one.adapter === other.adapter;
  const covariance =
    (sameCurve ? standardOf(one, "gaugeProof") * standardOf(other, "gaugeProof") : 0) +
    (sameAdapter ? standardOf(one, "adapter") * standardOf(other, "adapter") : 0);
  const product = standardOf(one) * standardOf(other);
  return product === 0 ? 0 : Math.min(1, covariance / product);
}

/** Combined standard uncertainty of the lines of one source, or of all. */
function standardOf({ contributions }: UncertainForce, source?: Contribution["source"]): number {
  let variance = 0;
  for (const c of contributions) if (source === undefined || c.source === source) variance += c.standardN * c.standardN;
  return Math.sqrt(variance);
}
