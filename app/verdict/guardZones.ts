import { guardBandN } from "./guardBandN.ts";
import type { JudgeInput, Limits } from "./Judgement.ts";

/** Forces about a limit at which a decision rule does not pass a value, or leaves it open. */
export type GuardZone = { readonly side: "minimum" | "maximum"; readonly fromN: number; readonly upToN: number };

/**
 * Where a rule's guard bands lie about the limits, to be drawn: inside the limit under `guarded` (outside with a negative
 * guard factor), on both sides under `iso14253` and `ilacG8`. Empty under the rules that have none.
 * @see ILAC-G8:09/2019 4.2; ISO 14253-1:2017 (from memory)
 */
export function guardZones(
  { minimumN, maximumN }: Limits,
  input: Pick<JudgeInput, "rule" | "standardUncertaintyN" | "degreesOfFreedom">,
): readonly GuardZone[] {
  const guardN = guardBandN(input);
  if (guardN === 0) return [];
  const beyondN = input.rule.rule === "guarded" ? 0 : guardN;
  const zone = (side: GuardZone["side"], a: number, b: number) => ({
    side,
    fromN: Math.min(a, b),
    upToN: Math.max(a, b),
  });
  return [
    ...(minimumN === undefined ? [] : [zone("minimum", minimumN - beyondN, minimumN + guardN)]),
    ...(maximumN === undefined ? [] : [zone("maximum", maximumN - guardN, maximumN + beyondN)]),
  ];
}
