/**
 * What a works takes to be so where no proof, calibration or reading says otherwise. Shares of the force. A figure that is
 * absent has been confirmed by nobody: the default stands in for it and its line in the budget is marked as assumed.
 */
export type Assumptions = {
  /** What a gauge nobody has proved is off by: standard uncertainty (k = 1). */
  readonly unprovedShare?: number | undefined;
  /** Greatest change of a gauge in a year: a half-width. */
  readonly driftPerYear?: number | undefined;
  /** Greatest change of a gauge's reading per kelvin away from the temperature of its proof: a half-width. */
  readonly perKelvin?: number | undefined;
  /** Greatest error from side load and a crooked seat: a half-width. */
  readonly misalignment?: number | undefined;
};

export type AssumptionName = keyof Assumptions;

/** Common practice, no source. */
export const defaultAssumptions: Required<{ readonly [N in AssumptionName]: number }> = {
  unprovedShare: 0.01,
  driftPerYear: 0.002,
  perKelvin: 0.0003,
  misalignment: 0.005,
};

/** One figure as it is to be used, and whether it is a default nobody has confirmed. */
export function assumption(
  given: Assumptions | undefined,
  name: AssumptionName,
): { readonly value: number; readonly assumed: boolean } {
  const value = given?.[name];
  return value === undefined ? { value: defaultAssumptions[name], assumed: true } : { value, assumed: false };
}
