import { asBudget } from "./asBudget.ts";
import type { Filed, Terms } from "./rejudge.ts";
import { uncertaintyOf } from "./uncertaintyOf.ts";
import { type Settling, whatSettles } from "./whatSettles.ts";

/**
 * What would have settled a filed check that could not be decided, by the terms it was filed by.
 * @param n  clampings that counted
 * @returns  undefined for a check that was decided, or that had no force or nothing to judge by
 */
export function whatSettlesFiled(filed: Filed & Terms, n: number): Settling | undefined {
  const { valueN, budget, limits, rule, cautionDrop, actDrop, baseline, previous } = filed;
  if (valueN === null || budget === null) return undefined;
  const known = asBudget(budget);
  const terms = { limits, rule, cautionDrop, actDrop };
  const earlier = { baseline: baseline ?? undefined, previous: previous ?? undefined };
  return whatSettles({ valueN, ...terms, ...earlier, ...uncertaintyOf(known) }, known.contributions, n);
}
