import { useMemo } from "react";
import type { Draft } from "../../../app/contract/seriesViews.ts";
import type { Spindle } from "../../../app/ledger/register.ts";
import { type GuardZone, guardZones } from "../../../app/verdict/guardZones.ts";
import { useProgram } from "../../state/CoreContext.ts";

const none: readonly GuardZone[] = Object.freeze([]);

/** The guard bands about the spindle's limits, as wide as the series in work makes them; none before it has an uncertainty. */
export function useGuardZones(draft: Draft | undefined, spindle: Spindle | undefined): readonly GuardZone[] {
  const worksRule = useProgram((state) => state.works?.rule);
  const rule = spindle?.rule ?? worksRule;
  const budget = draft?.forming?.budget;
  return useMemo(() => {
    if (budget === undefined || budget === null || rule === undefined || spindle === undefined) return none;
    // JSON has no infinity: very many degrees of freedom come as null.
    const degreesOfFreedom = budget.degreesOfFreedom ?? undefined;
    return guardZones(spindle.limits, { rule, standardUncertaintyN: budget.standardN, degreesOfFreedom });
  }, [budget, rule, spindle]);
}
