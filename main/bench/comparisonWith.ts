import type { Budget, Contribution } from "../../app/correction/Budget.ts";
import { sharedCorrelation } from "../../app/correction/sharedCorrelation.ts";
import type { Check } from "../../app/ledger/check.ts";
import { versionNames } from "./corrections.ts";
import type { EarlierCheck, FormFacts } from "./FormFacts.ts";

/** An earlier check's value with its own uncertainty, and how far its errors are those of today's. */
export type FiledComparison = {
  readonly checkId: string;
  readonly valueN: number;
  readonly standardUncertaintyN: number;
  readonly correlation: number;
};

/** Undefined when the earlier check had no value. */
export function comparisonWith(earlier: EarlierCheck, budget: Budget, facts: FormFacts): FiledComparison | undefined {
  const { check, checkId } = earlier;
  if (check.valueN === null) return undefined;
  const { gauge, adapter } = facts;
  const now = {
    contributions: budget.contributions,
    ...versionNames(gauge?.gaugeId, gauge?.curve?.version, adapter?.adapterId, adapter?.version),
  };
  const then = {
    contributions: contributionsThen(check),
    ...versionNames(check.gaugeId, check.corrections.curve?.version, check.adapterId, check.corrections.adapterVersion),
  };
  return {
    checkId,
    valueN: check.valueN,
    standardUncertaintyN: check.budget?.standardN ?? 0,
    correlation: sharedCorrelation(now, then),
  };
}

/** A filed budget as the pure rooms know it: JSON has no infinity, so very many degrees of freedom lie there as null. */
function contributionsThen(check: Check): readonly Contribution[] {
  return (check.budget?.contributions ?? []).map((c) => ({
    ...c,
    degreesOfFreedom: c.degreesOfFreedom ?? Number.POSITIVE_INFINITY,
  }));
}
