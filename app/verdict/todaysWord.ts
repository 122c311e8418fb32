import type { Judgement, Reason, Verdict } from "./Judgement.ts";
import { type FiledFigures, rejudge, type Terms } from "./rejudge.ts";

/** A filed check with its verdict and what it was judged by. */
export type FiledVerdict = FiledFigures & Required<Terms> & { readonly verdict: Verdict };

export type TodaysWord = {
  readonly verdict: Verdict;
  readonly reasons: readonly Reason[];
  /** What is not as it was filed. Empty: the same terms, and only this program judges otherwise than the one that filed. */
  readonly changed: readonly ("limits" | "rule" | "drops")[];
};

/**
 * What today's terms say beside a filed verdict, never in its place.
 * @returns  undefined when the terms are those it was filed by and the verdict is the same
 */
export function todaysWord(filed: FiledVerdict, today: Required<Terms>): TodaysWord | undefined {
  const changed = changedTerms(filed, today);
  const { verdict, reasons }: Judgement = rejudge(filed, today);
  return changed.length === 0 && verdict === filed.verdict ? undefined : { verdict, reasons, changed };
}

const limitNames = ["minimumN", "warningN", "nominalN", "maximumN"] as const;
const ruleNames = ["rule", "coverageFactor", "guardFactor", "threshold"] as const;

function changedTerms(then: Terms, now: Terms): TodaysWord["changed"] {
  const same = {
    limits: limitNames.every((name) => then.limits[name] === now.limits[name]),
    rule: ruleNames.every((name) => then.rule[name] === now.rule[name]),
    drops: then.cautionDrop === now.cautionDrop && then.actDrop === now.actDrop,
  };
  return (["limits", "rule", "drops"] as const).filter((name) => !same[name]);
}
