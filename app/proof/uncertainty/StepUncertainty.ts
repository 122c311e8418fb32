import { studentQuantile } from "../../numerics/studentQuantile.ts";
import { combineVariances } from "./curveVariance.ts";

export type ProofSource =
  | "reference"
  | "curve"
  | "repeatability"
  | "reproducibility"
  | "interpolation"
  | "resolution"
  | "zero"
  | "creep"
  | "reversibility"
  | "temperature";

/** One line of a proof's budget, in the reference's unit. */
export type ProofContribution = {
  readonly source: ProofSource;
  /** Standard uncertainty, k = 1. */
  readonly standard: number;
  /** Infinity where the value is taken as known. */
  readonly degreesOfFreedom: number;
};

export type StepUncertainty = {
  readonly reference: number;
  readonly contributions: readonly ProofContribution[];
  readonly standard: number;
  readonly degreesOfFreedom: number;
  readonly coverageFactor: number;
  readonly expanded: number;
};

/** Probability every expanded uncertainty of a proof is stated for. */
export const coverage = 0.95;

/**
 * Combines a step's budget. The coverage factor is Student's t for the effective degrees of freedom, cut to a whole
 * number as JCGM 100 has it, and never less than `leastFactor`.
 * @see JCGM 100:2008, G.4.1 and G.6.4
 */
export function stepUncertainty(
  reference: number,
  contributions: readonly ProofContribution[],
  leastFactor = 0,
): StepUncertainty {
  const total = combineVariances(
    contributions.map((c) => ({ variance: c.standard ** 2, degreesOfFreedom: c.degreesOfFreedom })),
  );
  const standard = Math.sqrt(total.variance);
  const df = total.degreesOfFreedom;
  const whole = Number.isFinite(df) ? Math.max(1, Math.floor(df + 1e-9)) : df;
  const coverageFactor = Math.max(leastFactor, studentQuantile(0.5 + coverage / 2, whole));
  return {
    reference,
    contributions,
    standard,
    degreesOfFreedom: df,
    coverageFactor,
    expanded: coverageFactor * standard,
  };
}
