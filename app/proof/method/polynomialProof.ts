import { choosePolynomialDegree, type DegreeTrial } from "../../numerics/choosePolynomialDegree.ts";
import { fitPolynomial, type PolynomialFit } from "../../numerics/fitPolynomial.ts";
import { type LackOfFit, lackOfFit } from "../../numerics/lackOfFit.ts";
import { polynomialAt } from "../../numerics/polynomialAt.ts";
import { type NetReading, netReadings } from "../data/netReadings.ts";
import type { ProofReading } from "../data/ProofReading.ts";
import type { ProofRemark } from "../data/ProofRemark.ts";
import { plausibility } from "../data/plausibility.ts";
import { seriesOf } from "../data/seriesOf.ts";
import { type ZeroAndCreep, zeroAndCreep } from "../data/zeroAndCreep.ts";
import { curveVariance, type Variance } from "../uncertainty/curveVariance.ts";
import { runEffect } from "../uncertainty/runEffect.ts";
import { type ProofContribution, type StepUncertainty, stepUncertainty } from "../uncertainty/StepUncertainty.ts";
import { type UncertaintyCurve, uncertaintyCurve } from "../uncertainty/uncertaintyCurve.ts";
import { carriesDegree } from "./carriesDegree.ts";
import { type CurveStep, curveSteps } from "./curveSteps.ts";
import { gaugeShares } from "./gaugeShares.ts";
import type { ProofOptions, ProofRefused } from "./ProofOptions.ts";

export type PolynomialProof = ZeroAndCreep & {
  readonly fit: PolynomialFit;
  /** The degrees compared; empty when the degree was given. */
  readonly trials: readonly DegreeTrial[];
  readonly lackOfFit: LackOfFit | undefined;
  readonly steps: readonly CurveStep[];
  /** The budget of the curve at any force, as of a step. */
  readonly uncertaintyAt: (reference: number) => StepUncertainty;
  readonly uncertaintyCurve: UncertaintyCurve;
  readonly remarks: readonly ProofRemark[];
};

/** Highest degree tried when none is given. */
const HIGHEST = 5;

/**
 * A calibration curve of net indication on reference force, a polynomial with a constant, and what is known of it.
 * Falling loads are not fitted. The degree is given, or the lowest that the readings do not contradict.
 * @returns  `refused` when the readings cannot carry the degree, or there are fewer than three
 */
export function polynomialProof(
  readings: readonly ProofReading[],
  options: ProofOptions,
): PolynomialProof | ProofRefused {
  const runs = netReadings(readings);
  const { series, remarks: noted } = seriesOf(runs);
  const loads = runs.flatMap((run) => run.loads).filter((l) => l.reading.direction === "up");
  const x = loads.map((l) => l.reading.reference);
  const y = loads.map((l) => l.net);
  const forces = new Set(loads.map((l) => l.level)).size;
  const trial = options.degree ?? 1;
  const refused = carriesDegree(forces, loads.length, trial, true);
  if (refused !== undefined) return refused;
  const choice =
    options.degree === undefined
      ? choosePolynomialDegree(x, y, Math.min(HIGHEST, forces - 1, loads.length - 2))
      : undefined;
  const fit = fitPolynomial(x, y, choice?.degree ?? trial);
  const named = loads.every((l) => l.reading.run !== undefined);
  const effect = named
    ? runEffect(
        fit,
        x,
        loads.map((l) => l.reading.run!),
      )
    : undefined;
  const ends = zeroAndCreep(series);
  const greatest = x.reduce((most, v) => Math.max(most, Math.abs(v)), 0);
  const uncertaintyAt = (reference: number) => {
    const { slope } = polynomialAt(fit, reference);
    const { within, between } = curveVariance(fit, effect, reference);
    const line = (
      source: ProofContribution["source"],
      { variance, degreesOfFreedom }: Variance,
    ): ProofContribution => ({
      source,
      standard: Math.sqrt(variance) / Math.abs(slope),
      degreesOfFreedom,
    });
    return stepUncertainty(reference, [
      line("curve", within),
      ...(between === undefined ? [] : [line("reproducibility", between)]),
      ...resolutionShare(fit, slope, options.resolution),
      ...gaugeShares(reference, greatest, ends, options),
    ]);
  };
  const steps = curveSteps(loads, fit, uncertaintyAt);
  const lack = lackOfFit(fit, stepLabels(loads));
  const remarks: ProofRemark[] = noted.filter((r) => r.code !== "loadTwice" && (named || r.code !== "loadOutOfOrder"));
  remarks.push(...plausibility(ends));
  if (!named) remarks.push({ code: "runsUnknown" });
  if (lack !== undefined && lack.p < 0.05)
    remarks.push({ code: "lackOfFit", about: `F = ${lack.f.toPrecision(4)}, p = ${lack.p.toPrecision(2)}` });
  if (options.referenceRelative === undefined) remarks.push({ code: "referenceUncertaintyUnknown" });
  return {
    ...ends,
    fit,
    trials: choice?.trials ?? [],
    lackOfFit: lack,
    steps,
    uncertaintyAt,
    uncertaintyCurve: uncertaintyCurve(
      steps.map((s) => s.reference),
      steps.map((s) => s.uncertainty.expanded),
    ),
    remarks,
  };
}

/** Resolution counts only where it exceeds the scatter, in which it otherwise shows already. */
function resolutionShare(fit: PolynomialFit, slope: number, resolution: number | undefined): ProofContribution[] {
  const standard = resolution === undefined ? 0 : resolution / Math.sqrt(12);
  return standard > fit.residualSd
    ? [{ source: "resolution", standard: standard / Math.abs(slope), degreesOfFreedom: Infinity }]
    : [];
}

/** Loads are the same where they are equal; where none are, the step labels say so. */
function stepLabels(loads: readonly NetReading[]): readonly number[] {
  const x = loads.map((l) => l.reading.reference);
  const labelled = new Set(x).size === x.length && loads.every((l) => l.reading.step !== undefined);
  return labelled ? loads.map((l) => l.level) : x;
}
