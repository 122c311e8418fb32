import type { Conformity, Zone } from "../../verdict/Judgement.ts";
import type { ProofRemark } from "../data/ProofRemark.ts";
import type { ProofSource } from "../uncertainty/StepUncertainty.ts";

/** What a proof came to, whatever its method, as plain data in newtons: the same for screen, ledger and report. `null`: does not exist. */
export type ProofResult = {
  /** Readings under load and at rest that were used. */
  readonly n: number;
  readonly fit: ProofFit | null;
  /** The degrees compared; empty where the degree was given or the method compares none. */
  readonly degreeTrials: readonly Readonly<Record<string, number | null>>[];
  readonly lackOfFit: {
    readonly f: number | null;
    readonly aboveDf: number;
    readonly belowDf: number;
    readonly p: number;
  } | null;
  /** ISO 376 "00" to "2", E74 "AA" or "A"; null with the reasons in `missing`. */
  readonly class: string | null;
  readonly missing: readonly ProofRemark[];
  readonly classRanges: readonly { readonly class: string; readonly fromN: number; readonly toN: number }[];
  /** ASTM E74 only. */
  readonly lowerLimitFactorN: number | null;
  readonly lowerLimitsN: { readonly AA: number; readonly A: number } | null;
  /** A working check against a permissible error: the worst of its steps. */
  readonly conformity: Conformity | null;
  readonly steps: readonly ProofStepResult[];
  /** Change of the zero and creep, percent of the greatest net indication. */
  readonly zeroPct: number | null;
  readonly creepPct: number | null;
  /** Probability of every expanded uncertainty here. */
  readonly coverage: number;
  /** U² = constantN² + (proportional x force)²; not below any step. */
  readonly uncertaintyCurve: { readonly constantN: number; readonly proportional: number };
  readonly remarks: readonly ProofRemark[];
};

/** Net indication on reference force, both in newtons, constant term first. */
export type ProofFit = {
  readonly degree: number;
  /** Whether a constant was fitted; without one `coefficients[0]` is 0. */
  readonly constant: boolean;
  readonly coefficients: readonly number[];
  readonly coefficientSd: readonly number[];
  readonly residualSdN: number;
  readonly residualDf: number;
  readonly rSquared: number;
  /** One for each reading that was fitted. */
  readonly residualsN: readonly number[];
};

export type ProofStepResult = {
  readonly referenceN: number;
  readonly n: number;
  /** Mean net indication. */
  readonly netN: number;
  /** What the curve shows there, and the mean of what it leaves; null without a curve. */
  readonly fittedN: number | null;
  readonly residualN: number | null;
  /** Net indication less reference. */
  readonly errorN: number;
  /** Errors of a standard by their symbols, percent of the load: mean error, repeatability with and without turning, interpolation, reversibility. */
  readonly q: number | null;
  readonly b: number | null;
  readonly bPrime: number | null;
  readonly fc: number | null;
  readonly v: number | null;
  readonly class: string | null;
  readonly permissibleN: number | null;
  readonly conformity: Conformity | null;
  readonly zone: Zone | null;
  readonly probabilityConforming: number | null;
  readonly uncertainty: ProofStepUncertainty;
};

export type ProofStepUncertainty = {
  readonly standardN: number;
  /** Null: as good as infinitely many. */
  readonly degreesOfFreedom: number | null;
  readonly coverageFactor: number;
  readonly expandedN: number;
  /** Percent of the load; null at zero. */
  readonly expandedPct: number | null;
  /** Expanded with k = 2 as EURAMET cg-4 has it, percent; ISO 376 only. */
  readonly guideExpandedPct: number | null;
  readonly contributions: readonly {
    readonly source: ProofSource;
    readonly standardN: number;
    readonly degreesOfFreedom: number | null;
  }[];
};
