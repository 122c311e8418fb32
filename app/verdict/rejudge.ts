import type { Contribution } from "../correction/Budget.ts";
import { asBudget } from "./asBudget.ts";
import type { Comparison, JudgeInput, Judgement } from "./Judgement.ts";
import { judge } from "./judge.ts";
import { uncertaintyOf } from "./uncertaintyOf.ts";

/** A check as it was filed; JSON's null where there is nothing. A filed check has these fields as they stand. */
export type Filed<Line = Omit<Contribution, "degreesOfFreedom">> = {
  readonly valueN: number | null;
  readonly budget: {
    readonly standardN: number;
    readonly degreesOfFreedom: number | null;
    readonly contributions: readonly (Line & { readonly degreesOfFreedom: number | null })[];
  } | null;
  readonly baseline: Comparison | null;
  readonly previous: Comparison | null;
};

/** What of it a verdict needs: of each line its size and shape alone. */
export type FiledFigures = Filed<Pick<Contribution, "distribution" | "standardN">>;

/** What may have changed since. */
export type Terms = Pick<JudgeInput, "limits" | "rule" | "cautionDrop" | "actDrop">;

/**
 * What today's limits and rule would say of a filed check: a projection beside the filed verdict, never in its place.
 * Value, uncertainty and what it was compared with stay as they were filed. Takes a few microseconds, so that a whole
 * works can be gone through at once.
 * @returns  `cannotTell` for a check without a force, or without a budget
 */
export function rejudge(filed: FiledFigures, today: Terms, probability?: "told" | "untold"): Judgement {
  const { valueN, budget } = filed;
  const none = { standardUncertaintyN: Number.NaN }; // without a force nobody looks at it
  const input = {
    ...today,
    valueN: budget === null ? undefined : (valueN ?? undefined),
    ...(budget === null ? none : uncertaintyOf(asBudget(budget))),
    baseline: filed.baseline ?? undefined,
    previous: filed.previous ?? undefined,
  };
  return judge(input, probability);
}
