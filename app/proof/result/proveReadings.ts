import type { PolynomialFit } from "../../numerics/fitPolynomial.ts";
import type { DecisionRule } from "../../verdict/Judgement.ts";
import type { ProvedCurve } from "../after/gaugeCurveOf.ts";
import type { ProofReading } from "../data/ProofReading.ts";
import type { ProofRemark } from "../data/ProofRemark.ts";
import { type E74Proof, e74Proof } from "../e74/e74Proof.ts";
import { type Iso376Proof, iso376Proof } from "../iso376/iso376Proof.ts";
import { isRefused, type ProofOptions, type ProofRefused } from "../method/ProofOptions.ts";
import { type PolynomialProof, polynomialProof } from "../method/polynomialProof.ts";
import type { ProofMethod } from "../plan/ProofPlan.ts";
import { type AstmE74Table, astmE74Table } from "../tables/astmE74Table.ts";
import { type Iso376Table, iso376Table } from "../tables/iso376Table.ts";
import { coverage, type StepUncertainty } from "../uncertainty/StepUncertainty.ts";
import type { UncertaintyCurve } from "../uncertainty/uncertaintyCurve.ts";
import type { PermissibleError } from "../working/PermissibleError.ts";
import { type WorkingCheck, workingCheck } from "../working/workingCheck.ts";
import type { ProofResult, ProofStepResult, ProofStepUncertainty } from "./ProofResult.ts";

/** Everything a method is told beside the readings. */
export type ProofTerms = {
  readonly options: ProofOptions;
  /** For a working check; absent: no statement of conformity is made. */
  readonly mpe?: PermissibleError | undefined;
  readonly rule?: DecisionRule | undefined;
  /** Tables a laboratory has corrected. */
  readonly tables?:
    | { readonly iso376?: Iso376Table | undefined; readonly astmE74?: AstmE74Table | undefined }
    | undefined;
};

export type Proved = {
  readonly result: ProofResult;
  /** What a curve for the gauge is made of; undefined where the readings carry none. */
  readonly curve: ProvedCurve | undefined;
};

/**
 * A proof by any of the methods, from readings in newtons to one form of result.
 * @returns  `refused` when the method can make nothing of the readings; what they lack for a class stands in the result
 */
export function proveReadings(
  method: ProofMethod,
  readings: readonly ProofReading[],
  terms: ProofTerms,
): Proved | ProofRefused {
  const { options, tables } = terms;
  switch (method) {
    case "polynomial":
      return unlessRefused(polynomialProof(readings, options), (p) => ({
        result: fromPolynomial(p, readings),
        curve: p,
      }));
    case "iso376":
      return unlessRefused(iso376Proof(readings, options, tables?.iso376 ?? iso376Table), (p) => ({
        result: fromIso376(p, readings),
        curve: p,
      }));
    case "astm-e74":
      return unlessRefused(e74Proof(readings, options, tables?.astmE74 ?? astmE74Table), (p) => ({
        result: fromE74(p, readings),
        curve: p,
      }));
    case "working":
      return unlessRefused(workingCheck(readings, terms.mpe, terms.rule ?? { rule: "guarded" }, options), (p) => {
        // A line beside the errors, where the readings carry one: the gauge can be corrected with it.
        const line = polynomialProof(readings, { ...options, degree: options.degree ?? 1 });
        const curve = isRefused(line) ? undefined : line;
        return { result: fromWorking(p, curve?.fit, readings), curve };
      });
  }
}

const unlessRefused = <P extends object>(proof: P | ProofRefused, made: (proof: P) => Proved): Proved | ProofRefused =>
  isRefused(proof) ? proof : made(proof);

type Whole = {
  readonly f0: number | undefined;
  readonly c: number | undefined;
  readonly remarks: readonly ProofRemark[];
  readonly uncertaintyCurve: UncertaintyCurve;
};

const noClass: readonly ProofRemark[] = Object.freeze([{ code: "noClassInMethod" }]);

function resultOf(
  readings: readonly ProofReading[],
  { f0, c, remarks, uncertaintyCurve }: Whole,
  fit: PolynomialFit | undefined,
  steps: readonly ProofStepResult[],
  more: Partial<ProofResult>,
): ProofResult {
  return {
    n: readings.length,
    fit: fit === undefined ? null : fitOf(fit),
    degreeTrials: [],
    lackOfFit: null,
    class: null,
    missing: noClass,
    classRanges: [],
    lowerLimitFactorN: null,
    lowerLimitsN: null,
    conformity: null,
    steps,
    zeroPct: f0 ?? null,
    creepPct: c ?? null,
    coverage,
    uncertaintyCurve: { constantN: uncertaintyCurve.constant, proportional: uncertaintyCurve.proportional },
    remarks,
    ...more,
  };
}

function fromPolynomial(p: PolynomialProof, readings: readonly ProofReading[]): ProofResult {
  const lack = p.lackOfFit;
  return resultOf(readings, p, p.fit, p.steps.map(curveStep), {
    degreeTrials: p.trials.map((t) => ({ ...t, pNext: t.pNext ?? null, pHigher: t.pHigher ?? null })),
    lackOfFit:
      lack === undefined ? null : { f: finite(lack.f), aboveDf: lack.aboveDf, belowDf: lack.belowDf, p: lack.p },
  });
}

function fromIso376(p: Iso376Proof, readings: readonly ProofReading[]): ProofResult {
  const steps = p.steps.map(
    (s): ProofStepResult => ({
      ...plainStep(s.reference, s.n, s.mean, s.uncertainty),
      fittedN: s.fitted,
      residualN: s.mean - s.fitted,
      b: s.b ?? null,
      bPrime: s.bPrime ?? null,
      fc: s.fc,
      v: s.v ?? null,
      class: s.class ?? null,
      uncertainty: { ...uncertaintyOf(s.uncertainty), guideExpandedPct: s.uncertainty.guideExpandedPct },
    }),
  );
  return resultOf(readings, p, p.fit, steps, {
    class: p.class ?? null,
    missing: p.missing,
    classRanges: p.ranges.map((r) => ({ class: r.class, fromN: r.from, toN: r.to })),
  });
}

function fromE74(p: E74Proof, readings: readonly ProofReading[]): ProofResult {
  return resultOf(readings, p, p.fit, p.steps.map(curveStep), {
    degreeTrials: p.trials.map((t) => ({ ...t, ratio: t.ratio ?? null, factor: t.factor ?? null })),
    class: p.class ?? null,
    missing: p.missing,
    classRanges: p.ranges.map((r) => ({ class: r.class, fromN: r.from, toN: r.to })),
    lowerLimitFactorN: p.lowerLimitFactor,
    lowerLimitsN: p.lowerLimits,
  });
}

function fromWorking(p: WorkingCheck, fit: PolynomialFit | undefined, readings: readonly ProofReading[]): ProofResult {
  const steps = p.steps.map(
    (s): ProofStepResult => ({
      ...plainStep(s.reference, s.n, s.net, s.uncertainty),
      errorN: s.error,
      q: s.q,
      b: s.b,
      v: s.v ?? null,
      permissibleN: s.permissible ?? null,
      conformity: s.conformity ?? null,
      zone: s.zone ?? null,
      probabilityConforming: s.probabilityConforming ?? null,
    }),
  );
  return resultOf(readings, p, fit, steps, { conformity: p.conformity ?? null });
}

const curveStep = (s: PolynomialProof["steps"][number]): ProofStepResult => ({
  ...plainStep(s.reference, s.n, s.net, s.uncertainty),
  fittedN: s.fitted,
  residualN: s.residual,
});

function plainStep(referenceN: number, n: number, netN: number, uncertainty: StepUncertainty): ProofStepResult {
  const none = { fittedN: null, residualN: null, q: null, b: null, bPrime: null, fc: null, v: null, class: null };
  const undecided = { permissibleN: null, conformity: null, zone: null, probabilityConforming: null };
  return {
    referenceN,
    n,
    netN,
    errorN: netN - referenceN,
    ...none,
    ...undecided,
    uncertainty: uncertaintyOf(uncertainty),
  };
}

function uncertaintyOf(u: StepUncertainty): ProofStepUncertainty {
  return {
    standardN: u.standard,
    degreesOfFreedom: finite(u.degreesOfFreedom),
    coverageFactor: u.coverageFactor,
    expandedN: u.expanded,
    expandedPct: u.reference === 0 ? null : (100 * u.expanded) / Math.abs(u.reference),
    guideExpandedPct: null,
    contributions: u.contributions.map((c) => ({
      source: c.source,
      standardN: c.standard,
      degreesOfFreedom: finite(c.degreesOfFreedom),
    })),
  };
}

const fitOf = (fit: PolynomialFit): ProofResult["fit"] => ({
  degree: fit.degree,
  constant: fit.constant,
  coefficients: fit.coefficients,
  coefficientSd: fit.coefficientSd,
  residualSdN: fit.residualSd,
  residualDf: fit.residualDf,
  rSquared: fit.rSquared,
  residualsN: fit.residuals,
});

const finite = (value: number) => (Number.isFinite(value) ? value : null);
