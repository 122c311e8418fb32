import type { Conformity, DecisionRule, Zone } from "../../verdict/Judgement.ts";
import { judge } from "../../verdict/judge.ts";
import { averagedLoads } from "../data/averagedLoads.ts";
import { type NetReading, netReadings } from "../data/netReadings.ts";
import type { ProofReading } from "../data/ProofReading.ts";
import type { ProofRemark } from "../data/ProofRemark.ts";
import { plausibility } from "../data/plausibility.ts";
import { seriesOf } from "../data/seriesOf.ts";
import { type ZeroAndCreep, zeroAndCreep } from "../data/zeroAndCreep.ts";
import { gaugeShares } from "../method/gaugeShares.ts";
import type { ProofOptions, ProofRefused } from "../method/ProofOptions.ts";
import { refuse } from "../method/proofRefusal.ts";
import { type ProofContribution, type StepUncertainty, stepUncertainty } from "../uncertainty/StepUncertainty.ts";
import { type UncertaintyCurve, uncertaintyCurve } from "../uncertainty/uncertaintyCurve.ts";
import { type ErrorVariances, errorVariances } from "./errorVariances.ts";
import { type PermissibleError, permissibleAt } from "./PermissibleError.ts";

export type WorkingStep = {
  readonly reference: number;
  readonly n: number;
  /** Mean net indication and its error, in the reference's unit. */
  readonly net: number;
  readonly error: number;
  /** The mean error, the range of the single ones, and the difference on the way down, percent of the load. */
  readonly q: number;
  readonly b: number;
  readonly v: number | undefined;
  readonly uncertainty: StepUncertainty;
  /** Permissible error; undefined, as all that follows, when none was given. */
  readonly permissible: number | undefined;
  readonly conformity: Conformity | undefined;
  readonly zone: Zone | undefined;
  readonly probabilityConforming: number | undefined;
};

export type WorkingCheck = ZeroAndCreep & {
  readonly steps: readonly WorkingStep[];
  /** The worst of the steps; undefined without a permissible error. */
  readonly conformity: Conformity | undefined;
  readonly uncertaintyCurve: UncertaintyCurve;
  readonly remarks: readonly ProofRemark[];
};

/**
 * Check of a working gauge: its errors at each load against the permissible error, by a decision rule. A gauge read
 * only once at each load is `undecided` under every rule that asks for the uncertainty.
 * @param readings  the indication in the reference's unit
 * @returns  `refused` when there is no loaded step
 * @see ISO 7500-1:2018, 6.5 (q, b, v, f0; from memory); ILAC-G8:09/2019, JCGM 106:2012 for the rules
 */
export function workingCheck(
  readings: readonly ProofReading[],
  mpe: PermissibleError | undefined,
  rule: DecisionRule,
  options: ProofOptions,
): WorkingCheck | ProofRefused {
  const runs = netReadings(readings);
  const sorted = seriesOf(runs);
  const loads = runs.flatMap((r) => r.loads).filter((l) => l.reading.reference > 0);
  const up = loads.filter((l) => l.reading.direction === "up");
  if (up.length === 0) return refuse("noLoad");
  const named = up.every((l) => l.reading.run !== undefined);
  const scatter = errorVariances(up, named);
  const ends = zeroAndCreep(sorted.series);
  const greatest = up.reduce((most, l) => Math.max(most, l.reading.reference), 0);
  const steps = averagedLoads(up).map((step): WorkingStep => {
    const same = up.filter((l) => l.level === step.level);
    const errors = same.map((l) => (100 * (l.net - l.reading.reference)) / l.reading.reference);
    const uncertainty = stepUncertainty(step.reference, [
      ...scatterLines(scatter, step.reference, step.n, options),
      ...gaugeShares(step.reference, greatest, ends, options),
    ]);
    const error = step.net - step.reference;
    const permissible = mpe === undefined ? undefined : permissibleAt(mpe, step.reference, greatest);
    return {
      reference: step.reference,
      n: step.n,
      net: step.net,
      error,
      q: (100 * error) / step.reference,
      b: Math.max(...errors) - Math.min(...errors),
      v: reversibility(loads, step.level, step.net, step.reference),
      uncertainty,
      permissible,
      ...decide(error, uncertainty, permissible, rule, scatter !== undefined),
    };
  });
  return {
    ...ends,
    steps,
    conformity: worst(steps.map((s) => s.conformity)),
    uncertaintyCurve: uncertaintyCurve(
      steps.map((s) => s.reference),
      steps.map((s) => s.uncertainty.expanded),
    ),
    remarks: [...remarksOn(sorted.remarks, named, scatter, options), ...plausibility(ends)],
  };
}

function scatterLines(
  scatter: ErrorVariances | undefined,
  reference: number,
  n: number,
  options: ProofOptions,
): ProofContribution[] {
  const lines: ProofContribution[] = [];
  if (scatter !== undefined) {
    const { within, between } = scatter.at(reference, n);
    lines.push({
      source: "repeatability",
      standard: Math.sqrt(within.variance),
      degreesOfFreedom: within.degreesOfFreedom,
    });
    if (between !== undefined)
      lines.push({
        source: "reproducibility",
        standard: Math.sqrt(between.variance),
        degreesOfFreedom: between.degreesOfFreedom,
      });
  }
  const resolution = (options.resolution ?? 0) / Math.sqrt(12);
  // A resolution finer than the scatter already shows in it.
  if (resolution > (scatter?.readingSd ?? 0))
    lines.push({ source: "resolution", standard: resolution, degreesOfFreedom: Infinity });
  return lines;
}

function reversibility(
  loads: readonly NetReading[],
  level: number,
  risen: number,
  reference: number,
): number | undefined {
  const down = averagedLoads(loads.filter((l) => l.level === level && l.reading.direction === "down"))[0];
  return down === undefined ? undefined : (100 * (down.net - down.reference - (risen - reference))) / reference;
}

type Decision = Pick<WorkingStep, "conformity" | "zone" | "probabilityConforming">;

function decide(
  error: number,
  u: StepUncertainty,
  permissible: number | undefined,
  rule: DecisionRule,
  repeated: boolean,
): Decision {
  if (permissible === undefined) return { conformity: undefined, zone: undefined, probabilityConforming: undefined };
  if (!repeated && rule.rule !== "simple")
    return { conformity: "undecided", zone: undefined, probabilityConforming: undefined };
  const { conformity, zone, probabilityConforming } = judge({
    valueN: error, // any unit will do: the rules compare figures
    // Readings without any scatter and nothing else known: the rules ask for something above zero.
    standardUncertaintyN: Math.max(u.standard, 1e-12 * permissible),
    degreesOfFreedom: Number.isFinite(u.degreesOfFreedom) ? Math.max(1, u.degreesOfFreedom) : undefined,
    limits: { minimumN: -permissible, maximumN: permissible },
    rule,
  });
  return { conformity, zone, probabilityConforming };
}

const fromWorst = ["nonConforming", "undecided", "conforming"] as const satisfies readonly Conformity[];
const worst = (all: readonly (Conformity | undefined)[]) => fromWorst.find((c) => all.includes(c));

function remarksOn(
  noted: readonly ProofRemark[],
  named: boolean,
  scatter: ErrorVariances | undefined,
  options: ProofOptions,
): ProofRemark[] {
  const remarks = noted.filter((r) => r.code !== "loadTwice" && (named || r.code !== "loadOutOfOrder"));
  if (scatter === undefined) remarks.push({ code: "needsRuns" });
  else if (!named) remarks.push({ code: "runsUnknown" });
  if (options.referenceRelative === undefined) remarks.push({ code: "referenceUncertaintyUnknown" });
  return remarks;
}
