import { fitPolynomial, type PolynomialFit } from "../../numerics/fitPolynomial.ts";
import { averagedLoads } from "../data/averagedLoads.ts";
import { type NetReading, netReadings } from "../data/netReadings.ts";
import type { ProofReading } from "../data/ProofReading.ts";
import type { ProofRemark } from "../data/ProofRemark.ts";
import { plausibility } from "../data/plausibility.ts";
import { seriesOf } from "../data/seriesOf.ts";
import { type ZeroAndCreep, zeroAndCreep } from "../data/zeroAndCreep.ts";
import { carriesDegree } from "../method/carriesDegree.ts";
import { type CurveStep, curveSteps } from "../method/curveSteps.ts";
import { type ProofOptions, type ProofRefused, referenceShare } from "../method/ProofOptions.ts";
import { type AstmE74Table, astmE74Table } from "../tables/astmE74Table.ts";
import { type StepUncertainty, stepUncertainty } from "../uncertainty/StepUncertainty.ts";
import { type UncertaintyCurve, uncertaintyCurve } from "../uncertainty/uncertaintyCurve.ts";
import { type E74Trial, e74Degree } from "./e74Degree.ts";

/** Forces a class may be used for, both ends in the reference's unit. */
export type E74Range = { readonly class: "AA" | "A"; readonly from: number; readonly to: number };

export type E74Proof = ZeroAndCreep & {
  readonly fit: PolynomialFit;
  /** The degrees compared on the averaged data; empty when the degree was given. */
  readonly trials: readonly E74Trial[];
  /** In the reference's unit; never below the resolution. */
  readonly lowerLimitFactor: number;
  /** Mean force for one unit of indication, which turned the residuals into force. */
  readonly forcePerIndication: number;
  /** Lowest force of each class before the range is cut to the loads that were applied. */
  readonly lowerLimits: { readonly AA: number; readonly A: number };
  readonly ranges: readonly E74Range[];
  /** Best class with a range. */
  readonly class: "AA" | "A" | undefined;
  /** Why there is no class; empty when there is one. */
  readonly missing: readonly ProofRemark[];
  readonly steps: readonly CurveStep[];
  readonly uncertaintyCurve: UncertaintyCurve;
  readonly remarks: readonly ProofRemark[];
};

/**
 * Proof of a force-measuring instrument by its lower limit factor: 2.4 residual standard deviations of the curve
 * through all readings, as a force; the class bounds follow as multiples of it. Falling loads are not fitted.
 * @returns  `refused` when the readings cannot carry the degree
 * @see ASTM E74-18, clause 8 (factor and multiples found, the rest from memory)
 */
export function e74Proof(
  readings: readonly ProofReading[],
  options: ProofOptions,
  table: AstmE74Table = astmE74Table,
): E74Proof | ProofRefused {
  const runs = netReadings(readings);
  const sorted = seriesOf(runs);
  const loads = runs.flatMap((r) => r.loads).filter((l) => l.reading.direction === "up" && l.reading.reference !== 0);
  const x = loads.map((l) => l.reading.reference);
  const y = loads.map((l) => l.net);
  const means = averagedLoads(loads);
  const refused =
    carriesDegree(means.length, loads.length, options.degree ?? 1, true) ??
    carriesDegree(means.length, means.length, 1, true);
  if (refused !== undefined) return refused;
  const choice =
    options.degree === undefined
      ? e74Degree(
          means.map((m) => m.reference),
          means.map((m) => m.net),
          table,
        )
      : undefined;
  const fit = fitPolynomial(x, y, choice?.degree ?? options.degree ?? 1);
  const ratios = loads.filter((l) => l.net !== 0).map((l) => l.reading.reference / l.net);
  const forcePerIndication = ratios.reduce((sum, v) => sum + v, 0) / ratios.length;
  const resolution = (options.resolution ?? 0) * Math.abs(forcePerIndication);
  const lowerLimitFactor = Math.max(table.factor * fit.residualSd * Math.abs(forcePerIndication), resolution);
  const lowest = x.reduce((least, v) => Math.min(least, v), Infinity);
  const highest = x.reduce((most, v) => Math.max(most, v), -Infinity);
  const lowerLimits = { AA: table.multipleAA * lowerLimitFactor, A: table.multipleA * lowerLimitFactor };
  const missing = missingData(loads.length, means.length, table);
  const ranges = (["AA", "A"] as const)
    .map((name): E74Range => ({ class: name, from: Math.max(lowerLimits[name], lowest), to: highest }))
    .filter((range) => missing.length === 0 && range.from <= range.to);
  if (missing.length === 0 && ranges.length === 0)
    missing.push({ code: "outsideClasses", about: `class A would begin at ${lowerLimits.A.toPrecision(4)}` });
  const ends = zeroAndCreep(sorted.series);
  const steps = curveSteps(loads, fit, (reference) => e74Uncertainty(reference, lowerLimitFactor, options));
  return {
    ...ends,
    fit,
    trials: choice?.trials ?? [],
    lowerLimitFactor,
    forcePerIndication,
    lowerLimits,
    ranges,
    class: ranges[0]?.class,
    missing,
    steps,
    uncertaintyCurve: uncertaintyCurve(
      steps.map((s) => s.reference),
      steps.map((s) => s.uncertainty.expanded),
    ),
    remarks: [...remarksOn(sorted.remarks, loads, options, table), ...plausibility(ends)],
  };
}

/** The lower limit factor stands for the curve's expanded uncertainty, so half of it is its standard one. */
function e74Uncertainty(reference: number, lowerLimitFactor: number, options: ProofOptions): StepUncertainty {
  const curve = { source: "curve", standard: lowerLimitFactor / 2, degreesOfFreedom: Infinity } as const;
  const known = referenceShare(options, reference);
  const force =
    known === undefined
      ? []
      : [{ source: "reference", standard: Math.abs(known * reference), degreesOfFreedom: Infinity } as const];
  return stepUncertainty(reference, [curve, ...force], 2);
}

function missingData(readings: number, forces: number, table: AstmE74Table): ProofRemark[] {
  const missing: ProofRemark[] = [];
  if (readings < table.fewestReadings)
    missing.push({ code: "needsReadings", about: `${readings} of ${table.fewestReadings}` });
  if (forces < table.fewestForces) missing.push({ code: "needsForces", about: `${forces} of ${table.fewestForces}` });
  if (readings > 0 && readings === forces) missing.push({ code: "needsRuns" });
  return missing;
}

function remarksOn(
  noted: readonly ProofRemark[],
  loads: readonly NetReading[],
  options: ProofOptions,
  table: AstmE74Table,
): ProofRemark[] {
  const remarks = noted.filter((r) => r.code !== "loadTwice");
  if (options.resolution === undefined) remarks.push({ code: "resolutionUnknown" });
  if (options.referenceRelative === undefined) remarks.push({ code: "referenceUncertaintyUnknown" });
  if (loads.some((l) => l.reading.run === undefined)) remarks.push({ code: "runsUnknown" });
  remarks.push({ code: table.fromMemory ? "tableFromMemory" : "tableEntered", about: table.standard });
  return remarks;
}
