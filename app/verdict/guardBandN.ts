import { coverageFactorOf } from "./coverageFactorOf.ts";
import type { JudgeInput } from "./Judgement.ts";

/**
 * Width of a rule's guard band in newtons, guard factor x coverage factor x standard uncertainty; 0 under the rules that
 * know none. With `iso14253` that is 1.645 u unless the rule states other factors.
 * @see ILAC-G8:09/2019 4.2.2; ISO 14253-1:2017 (from memory); JCGM 106:2012 8.3.2
 */
export function guardBandN({
  rule,
  standardUncertaintyN,
  degreesOfFreedom,
}: Pick<JudgeInput, "rule" | "standardUncertaintyN" | "degreesOfFreedom">): number {
  if (rule.rule === "simple" || rule.rule === "probability") return 0;
  return (rule.guardFactor ?? 1) * coverageFactorOf(rule, degreesOfFreedom) * standardUncertaintyN;
}
