import type { PolynomialFit } from "../../app/numerics/fitPolynomial.ts";
import type { ProofRemark } from "../../app/proof/data/ProofRemark.ts";
import { remarkSentence } from "../../app/proof/data/ProofRemark.ts";
import type { E74Proof } from "../../app/proof/e74/e74Proof.ts";
import type { Iso376Proof } from "../../app/proof/iso376/iso376Proof.ts";
import type { PolynomialProof } from "../../app/proof/method/polynomialProof.ts";
import { coverage, type StepUncertainty } from "../../app/proof/uncertainty/StepUncertainty.ts";
import type { UncertaintyCurve } from "../../app/proof/uncertainty/uncertaintyCurve.ts";
import type { WorkingCheck } from "../../app/proof/working/workingCheck.ts";
import type { Method } from "./proveOptions.ts";
import type { ProofFile } from "./readProofCsv.ts";

type Cell = number | string | null;

/** What `prove` answers, as JSON and as the ground of its text. What does not exist is null. */
export type ProveReport = {
  readonly method: Method;
  readonly n: number;
  readonly units: { readonly reference: string | null; readonly indication: string | null };
  readonly degree: number | null;
  readonly constant: boolean | null;
  readonly coefficients: readonly number[];
  readonly coefficientSd: readonly number[];
  readonly residualSd: number | null;
  readonly residualDf: number | null;
  readonly rSquared: number | null;
  readonly residuals: readonly number[];
  readonly degreeTrials: readonly Readonly<Record<string, Cell>>[];
  readonly lackOfFit: Readonly<Record<string, Cell>> | null;
  readonly class: string | null;
  readonly classReason: string | null;
  readonly classRanges: readonly { readonly class: string; readonly from: number; readonly to: number }[];
  readonly lowerLimitFactor: number | null;
  readonly lowerLimits: { readonly AA: number; readonly A: number } | null;
  readonly conformity: string | null;
  /** Errors and deviations with a symbol of a standard (b, bPrime, fc, v, q) are percent. */
  readonly steps: readonly Readonly<Record<string, Cell>>[];
  /** Percent of the greatest net indication. */
  readonly zero: number | null;
  readonly creep: number | null;
  readonly uncertainty: {
    readonly coverage: number;
    readonly steps: readonly StepReport[];
    /** U² = constant² + (proportional x reference)². */
    readonly curve: UncertaintyCurve;
  };
  readonly remarks: readonly { readonly code: string; readonly text: string }[];
};

type StepReport = {
  readonly reference: number;
  readonly standard: number;
  readonly degreesOfFreedom: number | null;
  readonly coverageFactor: number;
  readonly expanded: number;
  readonly expandedPct: number | null;
  readonly contributions: readonly {
    readonly source: string;
    readonly standard: number;
    readonly degreesOfFreedom: number | null;
  }[];
  /** Expanded with k = 2 as EURAMET cg-4 has it, percent; ISO 376 only. */
  readonly guideExpandedPct?: number;
};

/** Everything a method may answer; each fills what it has. */
type Parts = {
  readonly fit?: PolynomialFit | undefined;
  readonly ends: { readonly f0: number | undefined; readonly c: number | undefined };
  readonly steps: readonly {
    readonly cells: Readonly<Record<string, Cell>>;
    readonly uncertainty: StepUncertainty & { readonly guideExpandedPct?: number };
  }[];
  readonly uncertaintyCurve: UncertaintyCurve;
  readonly remarks: readonly ProofRemark[];
  readonly class?: string | undefined;
  readonly missing: readonly ProofRemark[];
} & Partial<
  Pick<ProveReport, "classRanges" | "lowerLimitFactor" | "lowerLimits" | "conformity" | "degreeTrials" | "lackOfFit">
>;

function report(method: Method, file: ProofFile, parts: Parts): ProveReport {
  const { fit, ends, steps } = parts;
  return {
    method,
    n: file.readings.length,
    units: { reference: file.referenceUnit ?? null, indication: file.indicationUnit ?? null },
    degree: fit?.degree ?? null,
    constant: fit?.constant ?? null,
    coefficients: fit?.coefficients ?? [],
    coefficientSd: fit?.coefficientSd ?? [],
    residualSd: fit?.residualSd ?? null,
    residualDf: fit?.residualDf ?? null,
    rSquared: fit?.rSquared ?? null,
    residuals: fit?.residuals ?? [],
    degreeTrials: parts.degreeTrials ?? [],
    lackOfFit: parts.lackOfFit ?? null,
    class: parts.class ?? null,
    classReason: parts.class === undefined ? parts.missing.map(remarkSentence).join("; ") : null,
    classRanges: parts.classRanges ?? [],
    lowerLimitFactor: parts.lowerLimitFactor ?? null,
    lowerLimits: parts.lowerLimits ?? null,
    conformity: parts.conformity ?? null,
    steps: steps.map(({ cells, uncertainty }) => ({ ...cells, expanded: uncertainty.expanded })),
    zero: ends.f0 ?? null,
    creep: ends.c ?? null,
    uncertainty: { coverage, steps: steps.map((s) => stepReport(s.uncertainty)), curve: parts.uncertaintyCurve },
    remarks: parts.remarks.map((remark) => ({ code: remark.code, text: remarkSentence(remark) })),
  };
}

function stepReport(u: Parts["steps"][number]["uncertainty"]): StepReport {
  return {
    reference: u.reference,
    standard: u.standard,
    degreesOfFreedom: finite(u.degreesOfFreedom),
    coverageFactor: u.coverageFactor,
    expanded: u.expanded,
    expandedPct: u.reference === 0 ? null : (100 * u.expanded) / Math.abs(u.reference),
    contributions: u.contributions.map((c) => ({ ...c, degreesOfFreedom: finite(c.degreesOfFreedom) })),
    ...(u.guideExpandedPct === undefined ? {} : { guideExpandedPct: u.guideExpandedPct }),
  };
}

const finite = (value: number) => (Number.isFinite(value) ? value : null);
const noClass: readonly ProofRemark[] = Object.freeze([{ code: "noClassInMethod" }]);

export function polynomialReport(file: ProofFile, proof: PolynomialProof): ProveReport {
  const lack = proof.lackOfFit;
  return report("polynomial", file, {
    ...proof,
    ends: proof,
    missing: noClass,
    steps: proof.steps.map(({ uncertainty, ...cells }) => ({ cells, uncertainty })),
    degreeTrials: proof.trials.map((t) => ({ ...t, pNext: t.pNext ?? null, pHigher: t.pHigher ?? null })),
    lackOfFit: lack === undefined ? null : { ...lack, f: finite(lack.f) },
  });
}

export function iso376Report(file: ProofFile, proof: Iso376Proof): ProveReport {
  return report("iso376", file, {
    ...proof,
    ends: proof,
    classRanges: proof.ranges,
    steps: proof.steps.map(({ uncertainty, reference, n, mean, fitted, b, bPrime, fc, v, ...step }) => ({
      cells: {
        reference,
        n,
        mean,
        fitted,
        b: b ?? null,
        bPrime: bPrime ?? null,
        fc,
        v: v ?? null,
        class: step.class ?? null,
      },
      uncertainty,
    })),
  });
}

export function e74Report(file: ProofFile, proof: E74Proof): ProveReport {
  return report("astm-e74", file, {
    ...proof,
    ends: proof,
    classRanges: proof.ranges,
    steps: proof.steps.map(({ uncertainty, ...cells }) => ({ cells, uncertainty })),
    degreeTrials: proof.trials.map((t) => ({ ...t, ratio: t.ratio ?? null, factor: t.factor ?? null })),
  });
}

/** @param fit  a curve beside the errors, for information; absent where the readings carry none */
export function workingReport(file: ProofFile, check: WorkingCheck, fit: PolynomialFit | undefined): ProveReport {
  return report("working", file, {
    ...check,
    fit,
    ends: check,
    missing: noClass,
    conformity: check.conformity ?? null,
    steps: check.steps.map(({ uncertainty, ...step }) => ({
      cells: {
        ...step,
        v: step.v ?? null,
        permissible: step.permissible ?? null,
        conformity: step.conformity ?? null,
        zone: step.zone ?? null,
        probabilityConforming: step.probabilityConforming ?? null,
      },
      uncertainty,
    })),
  });
}
