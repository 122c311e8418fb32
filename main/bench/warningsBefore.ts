import type { Warning } from "../../app/contract/seriesViews.ts";
import { fitChecks } from "../../app/verdict/fitChecks.ts";
import type { DraftState } from "./DraftState.ts";
import type { FormFacts } from "./FormFacts.ts";

/** What is to be said before the series starts, with the reasons the user gave for going on all the same. */
export function warningsBefore({ overrides }: DraftState, facts: FormFacts): readonly Warning[] {
  const { spindle, adapter, gauge, previous, baseline, resolutionN, today } = facts;
  const lastN = (previous ?? baseline)?.check.valueN ?? undefined;
  return fitChecks({ spindle, adapter, gauge: gauge && { ...gauge, resolutionN }, lastN, today }).map((warning) => ({
    ...warning,
    ...(overrides[warning.code] === undefined ? {} : { overriddenWith: overrides[warning.code] }),
  }));
}
