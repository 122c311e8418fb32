import type { Contribution } from "../correction/Budget.ts";

type Line = Pick<Contribution, "standardN">;
type FiledLine<L> = L & { readonly degreesOfFreedom: number | null };
type FiledBudget<L> = {
  readonly standardN: number;
  readonly degreesOfFreedom: number | null;
  readonly contributions: readonly FiledLine<L>[];
};

/** A filed budget as it was: JSON has no infinity, so very many degrees of freedom lie in the file as null. */
export function asBudget<L extends Line>({ standardN, degreesOfFreedom, contributions }: FiledBudget<L>) {
  return {
    standardN,
    degreesOfFreedom: degreesOfFreedom ?? Number.POSITIVE_INFINITY,
    contributions: contributions.map((c) => ({
      ...c,
      degreesOfFreedom: c.degreesOfFreedom ?? Number.POSITIVE_INFINITY,
    })),
  };
}
