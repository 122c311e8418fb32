import type { Budget } from "../correction/Budget.ts";
import { type SpreadLine, spreadOf } from "../correction/spreadOf.ts";
import type { JudgeInput } from "./Judgement.ts";

/** What `judge` needs of a budget: every caller takes it from here, so that the forming, the filed and the re-judged check agree. */
export function uncertaintyOf({
  standardN,
  degreesOfFreedom,
  contributions,
}: Pick<Budget, "standardN" | "degreesOfFreedom"> & { readonly contributions: readonly SpreadLine[] }): Pick<
  JudgeInput,
  "standardUncertaintyN" | "degreesOfFreedom" | "spread"
> {
  return { standardUncertaintyN: standardN, degreesOfFreedom, spread: spreadOf(contributions) };
}
