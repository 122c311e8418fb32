import type { ProofPage } from "../../../app/contract/proofViews.ts";
import { csvLine } from "../../../app/words/csvCell.ts";

const head = [
  "kind",
  "run",
  "position_deg",
  "direction",
  "step",
  "reference_N",
  "reference_standard_N",
  "indication_N",
  "n",
  "at",
  "replaced_because",
  "net_N",
  "fitted_N",
  "residual_N",
  "error_N",
  "error_pct",
  "standard_N",
  "expanded_N",
  "expanded_pct",
  "coverage_factor",
  "coverage",
  "degrees_of_freedom",
  "b_pct",
  "b_prime_pct",
  "fc_pct",
  "v_pct",
  "class",
  "permissible_N",
  "conformity",
  "probability_conforming",
] as const;
type Column = (typeof head)[number];

/**
 * A proof as one table for spreadsheets: the readings as they were taken, then the results by step; `kind` tells them
 * apart. The same columns and decimal points in every language, so that a program can read it. Newtons throughout.
 * @see RFC 4180
 */
export function proofCsv({ proof }: ProofPage): string {
  const row = (cells: Partial<Record<Column, unknown>>) => csvLine(head.map((column) => cells[column]));
  const readings = proof.takings.map((taking) =>
    row({
      kind: "reading",
      run: taking.run,
      position_deg: taking.positionDeg,
      direction: taking.direction,
      step: taking.step,
      reference_N: taking.referenceN,
      reference_standard_N: taking.referenceStandardN,
      indication_N: taking.indicationN,
      n: taking.n,
      at: taking.at,
      replaced_because: taking.replaced?.reason,
    }),
  );
  const steps = (proof.result?.steps ?? []).map((step, i) =>
    row({
      kind: "result",
      step: i + 1,
      reference_N: step.referenceN,
      n: step.n,
      net_N: step.netN,
      fitted_N: step.fittedN,
      residual_N: step.residualN,
      error_N: step.errorN,
      error_pct: step.referenceN === 0 ? null : (100 * step.errorN) / step.referenceN,
      standard_N: step.uncertainty.standardN,
      expanded_N: step.uncertainty.expandedN,
      expanded_pct: step.uncertainty.expandedPct,
      coverage_factor: step.uncertainty.coverageFactor,
      coverage: proof.result?.coverage,
      degrees_of_freedom: step.uncertainty.degreesOfFreedom,
      b_pct: step.b,
      b_prime_pct: step.bPrime,
      fc_pct: step.fc,
      v_pct: step.v,
      class: step.class,
      permissible_N: step.permissibleN,
      conformity: step.conformity,
      probability_conforming: step.probabilityConforming,
    }),
  );
  return [csvLine([...head]), ...readings, ...steps].join("");
}
