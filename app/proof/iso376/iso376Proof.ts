import { fitPolynomial, type PolynomialFit } from "../../numerics/fitPolynomial.ts";
import { netReadings } from "../data/netReadings.ts";
import type { ProofReading } from "../data/ProofReading.ts";
import type { ProofRemark } from "../data/ProofRemark.ts";
import { plausibility } from "../data/plausibility.ts";
import { type SortedProof, seriesOf } from "../data/seriesOf.ts";
import { type ZeroAndCreep, zeroAndCreep } from "../data/zeroAndCreep.ts";
import { carriesDegree } from "../method/carriesDegree.ts";
import { type ProofOptions, type ProofRefused, referenceShare } from "../method/ProofOptions.ts";
import { refuse } from "../method/proofRefusal.ts";
import { type Iso376Table, iso376Table } from "../tables/iso376Table.ts";
import { type UncertaintyCurve, uncertaintyCurve } from "../uncertainty/uncertaintyCurve.ts";
import { type Iso376Range, iso376Class } from "./iso376Class.ts";
import { type Iso376Errors, iso376Errors, iso376Steps } from "./iso376Errors.ts";
import { type Iso376Roles, iso376Roles } from "./iso376Roles.ts";
import { type Iso376Budget, iso376Uncertainty } from "./iso376Uncertainty.ts";

export type Iso376StepResult = Iso376Errors & {
  readonly reference: number;
  readonly n: number;
  readonly mean: number;
  readonly fitted: number;
  /** Best class the step meets by itself. */
  readonly class: string | undefined;
  readonly uncertainty: Iso376Budget;
};

export type Iso376Proof = ZeroAndCreep & {
  /** Mean deflection of the rotated series on force, without a constant. */
  readonly fit: PolynomialFit;
  readonly steps: readonly Iso376StepResult[];
  readonly class: string | undefined;
  /** Why there is no class; empty when there is one. */
  readonly missing: readonly ProofRemark[];
  readonly ranges: readonly Iso376Range[];
  readonly uncertaintyCurve: UncertaintyCurve;
  readonly remarks: readonly ProofRemark[];
};

/**
 * Proof of a force-proving instrument by relative errors: three mounting positions, two series at one of them,
 * zeros, and falling loads or creep. Missing data cost the class, never the errors that can be computed.
 * @param options  degree 1, 2 or 3; absent 3, or the most the steps carry
 * @returns  `refused` for another degree, or when there are not enough steps for it
 * @see ISO 376:2011, clauses 7 and 8 (from memory)
 */
export function iso376Proof(
  readings: readonly ProofReading[],
  options: ProofOptions,
  table: Iso376Table = iso376Table,
): Iso376Proof | ProofRefused {
  const sorted = seriesOf(netReadings(readings));
  const roles = iso376Roles(sorted.series);
  const common = iso376Steps(roles);
  const degree = options.degree ?? Math.max(1, Math.min(3, common.length - 1));
  if (![1, 2, 3].includes(degree)) return refuse("iso376Degree", degree);
  const refused = carriesDegree(common.length, common.length, degree, false);
  if (refused !== undefined) return refused;
  const fit = fitPolynomial(
    common.map((s) => s.reference),
    common.map((s) => s.mean),
    degree,
    false,
  );
  const ends = zeroAndCreep(sorted.series);
  const top = common.at(-1)!; // the degree is carried, so there are steps
  const greatest = { force: top.reference, deflection: top.deflections[0]! };
  const errors = common.map((step) => iso376Errors(step, fit, roles));
  const whole = {
    ...ends,
    resolutionForce:
      options.resolution === undefined ? undefined : (options.resolution * greatest.force) / greatest.deflection,
  };
  const missing = missingData(roles, sorted, ends);
  const classes = iso376Class(
    errors.map((e, i) => {
      const { reference } = common[i]!;
      const share = referenceShare(options, reference);
      return { ...e, reference, referenceExpanded: share === undefined ? undefined : 200 * share };
    }),
    whole,
    table,
    missing,
  );
  const steps = common.map(
    (step, i): Iso376StepResult => ({
      ...errors[i]!,
      reference: step.reference,
      n: step.deflections.length,
      mean: step.mean,
      fitted: step.mean / (1 + errors[i]!.fc / 100),
      class: classes.byStep[i],
      uncertainty: iso376Uncertainty(step, errors[i]!, fit, greatest, ends, options),
    }),
  );
  return {
    ...ends,
    fit,
    steps,
    class: classes.class,
    missing: classes.missing,
    ranges: classes.ranges,
    uncertaintyCurve: uncertaintyCurve(
      steps.map((s) => s.reference),
      steps.map((s) => s.uncertainty.expanded),
    ),
    remarks: [...remarksOn(sorted, roles, common.length, options, table), ...plausibility(ends)],
  };
}

function missingData(roles: Iso376Roles, { remarks }: SortedProof, { f0, c }: ZeroAndCreep): ProofRemark[] {
  const positions = roles.rotated.flatMap((s) => (s.positionDeg === undefined ? [] : [s.positionDeg]));
  const missing: ProofRemark[] = [];
  if (positions.length < 3)
    missing.push({ code: "needsPositions", about: positions.length === 0 ? "none named" : positions.join(", ") });
  if (roles.repeated === undefined) missing.push({ code: "needsRepeat" });
  if (f0 === undefined) missing.push({ code: "needsZeroReturn" });
  if (c === undefined && roles.falling.length < 2) missing.push({ code: "needsReversibilityOrCreep" });
  return [...missing, ...remarks.filter((r) => r.code === "loadOutOfOrder")];
}

function remarksOn(
  sorted: SortedProof,
  roles: Iso376Roles,
  steps: number,
  options: ProofOptions,
  table: Iso376Table,
): ProofRemark[] {
  const remarks = sorted.remarks.filter((r) => r.code !== "loadOutOfOrder");
  const all = new Set(roles.rotated.flatMap((s) => s.up.map((p) => p.level))).size;
  if (all > steps) remarks.push({ code: "stepNotInAllSeries", about: `${all - steps} of ${all} steps` });
  if (steps < table.fewestSteps) remarks.push({ code: "fewSteps", about: `${steps} of ${table.fewestSteps}` });
  if (options.resolution === undefined) remarks.push({ code: "resolutionUnknown" });
  if (options.referenceRelative === undefined) remarks.push({ code: "referenceUncertaintyUnknown" });
  remarks.push({ code: table.fromMemory ? "tableFromMemory" : "tableEntered", about: table.standard });
  return remarks;
}
