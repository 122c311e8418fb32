import type { GaugeCurve } from "../../correction/GaugeCurve.ts";
import { fitPolynomial } from "../../numerics/fitPolynomial.ts";
import { studentQuantile } from "../../numerics/studentQuantile.ts";
import { daysBetween, type PlainDate } from "../data/plainDate.ts";
import { type CurveChange, curveChange } from "./curveChange.ts";

/** One proof of a gauge: its curve before any adjustment, and after one. */
export type ProvedOn = {
  readonly on: PlainDate;
  readonly asFound: GaugeCurve;
  /** Absent: nothing was adjusted. */
  readonly asLeft?: GaugeCurve | undefined;
};

export type DriftStep = {
  readonly from: PlainDate;
  readonly to: PlainDate;
  readonly days: number;
  readonly worst: CurveChange;
};

export type ProofDrift = {
  readonly steps: readonly DriftStep[];
  /** Relative change a year with the half-width of its 95 % interval, from the changes summed up without the adjustments. */
  readonly perYear: { readonly slope: number; readonly expanded: number } | undefined;
};

/**
 * What a gauge did between its proofs: each proof's curve as found against the one before as left, at the indication
 * where they lie furthest apart. Adjustments are no drift.
 * @param proofs  of one gauge, in any order
 * @returns  `perYear` undefined with fewer than four proofs: three give a line through two changes, which says nothing of its own doubt
 * @throws RangeError  a date that is none
 */
export function driftOfProofs(proofs: readonly ProvedOn[]): ProofDrift {
  const sorted = proofs.toSorted((a, b) => daysBetween(b.on, a.on));
  const steps = sorted.slice(1).flatMap((proof, i): DriftStep[] => {
    const before = sorted[i]!;
    const change = curveChange(before.asLeft ?? before.asFound, proof.asFound);
    return change === undefined
      ? []
      : [{ from: before.on, to: proof.on, days: daysBetween(before.on, proof.on), worst: change.worst }];
  });
  return { steps, perYear: trend(steps) };
}

function trend(steps: readonly DriftStep[]): ProofDrift["perYear"] {
  if (steps.length < 3) return undefined;
  let years = 0;
  let sum = 0;
  const x = [0];
  const y = [0];
  for (const { days, worst } of steps) {
    years += days / 365.25;
    sum += worst.relative;
    x.push(years);
    y.push(sum);
  }
  if (new Set(x).size < 3) return undefined;
  const fit = fitPolynomial(x, y, 1);
  return { slope: fit.coefficients[1]!, expanded: studentQuantile(0.975, fit.residualDf) * fit.coefficientSd[1]! };
}
