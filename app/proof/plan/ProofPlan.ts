import presets from "./presets.json" with { type: "json" };

export const proofMethods = ["polynomial", "iso376", "astm-e74", "working"] as const;
export type ProofMethod = (typeof proofMethods)[number];

/** One loading without a break. */
export type PlannedRun = {
  readonly run: string;
  readonly positionDeg: number;
  /** Whether the loads are read again on the way down. */
  readonly falling: boolean;
};

/** What is to be done in a proof, as data: it can be stored, corrected and taken up again. */
export type ProofPlan = {
  readonly name: string;
  readonly method: ProofMethod;
  /** Target loads, rising; live loads need not meet them exactly. */
  readonly loadsN: readonly number[];
  /** Loadings to the greatest load before the first run, nothing read. */
  readonly preloads: number;
  readonly runs: readonly PlannedRun[];
  /** Whether the first run ends with readings 30 s and 300 s after the greatest load is reached. */
  readonly creep: boolean;
  /** Wait after a load stands, time a reading is averaged over, rest at zero before it is read. */
  readonly dwellS: number;
  readonly readS: number;
  readonly restS: number;
};

/**
 * The preset of a method, for a gauge's capacity. Steps and times are common practice, no source, and can be changed.
 * @throws RangeError  a capacity that is not above zero
 */
export function presetPlan(method: ProofMethod, capacityN: number): ProofPlan {
  if (!(capacityN > 0 && Number.isFinite(capacityN)))
    throw new RangeError(`a plan needs a capacity above zero, got ${capacityN}`);
  const { loadShares, ...preset } = presets.find((p) => p.method === method)!; // the file has one for each method, as a test shows
  return { ...preset, method, loadsN: loadShares.map((share) => share * capacityN) };
}
