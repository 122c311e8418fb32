import type { JudgeInput } from "./Judgement.ts";
import type { Terms } from "./rejudge.ts";

type OfSpindle = { readonly limits: JudgeInput["limits"]; readonly rule?: JudgeInput["rule"] | undefined };

/** By what a spindle is judged: its own limits and rule, else the rule of the works; the drop limits are the works'. */
export function termsOf(spindle: OfSpindle | undefined, works: Omit<Required<Terms>, "limits">): Required<Terms> {
  const { rule, cautionDrop, actDrop } = works;
  return { limits: spindle?.limits ?? {}, rule: spindle?.rule ?? rule, cautionDrop, actDrop };
}
