import { studentQuantile } from "../../numerics/studentQuantile.ts";

export const proofSources = [
  "reference",
  "curve",
  "repeatability",
  "reproducibility",
  "interpolation",
  "resolution",
  "zero",
  "creep",
  "reversibility",
  "temperature",
] as const;

export type ProofSource = (typeof proofSources)[number];

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
 * Combines a step's budget. Two or three runs are one or two degrees of freedom, where the factor for the effective
 * degrees of freedom (Welch and Satterthwaite) covers too little, 89 to 95 %, and the mean of the lines' Student
 * factors weighted by variance (Cochran) too much, 94 to 98 %. The mean of both is taken: with three runs and more it
 * covers 94.4 to 96.4 % over every mix of lines, with two 92 to 97 %; the bench repeats the count.
 * @param leastFactor  smallest coverage factor, where a method sets one
 * @returns  `degreesOfFreedom` by Welch and Satterthwaite; Infinity where nothing scatters
 * @see JCGM 100:2008, G.4; Cochran and Cox, Experimental Designs, 4.14
 */
export function stepUncertainty(
  reference: number,
  contributions: readonly ProofContribution[],
  leastFactor = 0,
): StepUncertainty {
  let variance = 0;
  let weighted = 0;
  let squares = 0;
  for (const { standard, degreesOfFreedom } of contributions) {
    const part = standard * standard;
    variance += part;
    weighted += part * factorFor(degreesOfFreedom);
    squares += (part * part) / degreesOfFreedom;
  }
  const standard = Math.sqrt(variance);
  const degreesOfFreedom = squares > 0 ? (variance * variance) / squares : Infinity;
  const effective = factorFor(degreesOfFreedom);
  const coverageFactor = Math.max(leastFactor, variance > 0 ? (effective + weighted / variance) / 2 : effective);
  return { reference, contributions, standard, degreesOfFreedom, coverageFactor, expanded: coverageFactor * standard };
}

const factorFor = (degreesOfFreedom: number) => studentQuantile(0.5 + coverage / 2, degreesOfFreedom);
