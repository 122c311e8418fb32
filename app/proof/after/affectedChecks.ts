import type { Contribution } from "../../correction/Budget.ts";
import { combine } from "../../correction/combine.ts";
import { curveAt } from "../../correction/curveAt.ts";
import { curveUncertainty } from "../../correction/curveUncertainty.ts";
import type { GaugeCurve } from "../../correction/GaugeCurve.ts";
import type { Comparison, Verdict } from "../../verdict/Judgement.ts";
import { type Filed, rejudge, type Terms } from "../../verdict/rejudge.ts";

/** What reverse traceability needs of a filed check, as it stands in the ledger. */
export type CheckInDoubt = {
  readonly checkId: string;
  readonly verdict: Verdict;
  readonly valueN: number | null;
  /** Mean net indication of the series: what the gauge showed, before any curve. */
  readonly netN: number | null;
  readonly adapterScale: number;
  readonly budget: Filed["budget"];
  readonly baseline: (Comparison & { readonly checkId: string }) | null;
  readonly previous: (Comparison & { readonly checkId: string }) | null;
  /** As they stood when it was filed. */
  readonly terms: Terms;
};

/** What was found: the gauge's true curve, or the adapter's true scale, or both. */
export type Found = {
  readonly curve?: GaugeCurve | undefined;
  readonly adapter?: { readonly scale: number; readonly relative: number } | undefined;
};

export type AffectedCheck = {
  readonly checkId: string;
  readonly filedVerdict: Verdict;
  readonly wouldBe: Verdict;
  readonly verdictChanges: boolean;
  readonly filedN: number | undefined;
  /** By what was found; undefined where the check has no force to correct. */
  readonly correctedN: number | undefined;
  /** correctedN over filedN, less 1. */
  readonly relative: number | undefined;
};

/**
 * What the checks since a gauge's (or adapter's) last good proof would say with what is known now. A baseline or
 * previous check that is itself among them is corrected first, so that a common error cancels in the fall as it did on
 * the day. Nothing filed is rewritten: this is a list beside it.
 * @param checks  all checks with that gauge or adapter since its last good proof; their order does not matter
 * @returns  one entry for each, in the same order
 */
export function affectedChecks(checks: readonly CheckInDoubt[], found: Found): readonly AffectedCheck[] {
  const corrected = new Map(checks.map((check) => [check.checkId, correct(check, found)]));
  const compared = (earlier: CheckInDoubt["baseline"]): Comparison | null => {
    const again = earlier === null ? undefined : corrected.get(earlier.checkId);
    return earlier === null || again === undefined || again.valueN === null || !(again.valueN > 0)
      ? earlier
      : { ...earlier, valueN: again.valueN, standardUncertaintyN: again.budget?.standardN };
  };
  return checks.map((check) => {
    const now = corrected.get(check.checkId)!;
    const { verdict: wouldBe } = rejudge(
      { ...now, baseline: compared(check.baseline), previous: compared(check.previous) },
      check.terms,
    );
    return {
      checkId: check.checkId,
      filedVerdict: check.verdict,
      wouldBe,
      verdictChanges: wouldBe !== check.verdict,
      filedN: check.valueN ?? undefined,
      correctedN: now.valueN ?? undefined,
      relative:
        now.valueN === null || check.valueN === null || check.valueN === 0 ? undefined : now.valueN / check.valueN - 1,
    };
  });
}

/** Value and budget by what was found: the proved share is replaced, the other lines keep their share of the force. */
function correct(
  { valueN, netN, adapterScale, budget }: CheckInDoubt,
  { curve, adapter }: Found,
): Pick<Filed, "valueN" | "budget"> {
  if (valueN === null || budget === null) return { valueN: null, budget: null };
  if (curve !== undefined && netN === null) return { valueN, budget };
  const atGauge = curve === undefined || netN === null ? valueN / adapterScale : curveAt(curve, netN).forceN;
  const newN = atGauge * (adapter?.scale ?? adapterScale);
  const ratio = valueN === 0 ? 1 : Math.abs(newN / valueN);
  const replaced = new Map<Contribution["source"], number | undefined>([
    ["gaugeProof", curve === undefined || netN === null ? undefined : curveUncertainty(curve.uncertainty, netN)],
    ["adapter", adapter?.relative],
  ]);
  const kept = budget.contributions
    .filter((c) => replaced.get(c.source) === undefined)
    .map((c) => ({ ...c, standardN: c.standardN * ratio, degreesOfFreedom: c.degreesOfFreedom ?? Infinity }));
  const known = [...replaced].flatMap(([source, relative]): Contribution[] => {
    if (relative === undefined || relative === 0) return [];
    return [
      {
        source,
        type: "B",
        distribution: "normal",
        standardN: relative * Math.abs(newN),
        degreesOfFreedom: Infinity,
        assumed: false,
      },
    ];
  });
  const lines = [...kept, ...known];
  return { valueN: newN, budget: lines.some((c) => c.standardN > 0) ? combine(lines) : budget };
}
