import { spreadBelow } from "../correction/spreadBelow.ts";
import { normalCdf } from "../numerics/normalCdf.ts";
import { studentCdf } from "../numerics/studentCdf.ts";
import type { JudgeInput } from "./Judgement.ts";

export type Measured = Pick<JudgeInput, "standardUncertaintyN" | "degreesOfFreedom" | "spread">;

/**
 * Probability that the true force lies more than `distanceN` below the value (with a negative distance: below a point
 * above it). From the budget's own shape where it is known, else from Student's t where degrees of freedom are given,
 * else from the normal distribution. All of them are symmetric, so it is the probability above the mirrored point too.
 * @see JCGM 106:2012 7.2; JCGM 101:2008 6.4.9
 */
export function probabilityBeyond(
  { standardUncertaintyN, degreesOfFreedom, spread }: Measured,
  distanceN: number,
): number {
  if (spread !== undefined) return spreadBelow(spread, -distanceN);
  return degreesOfFreedom === undefined
    ? normalCdf(-distanceN / standardUncertaintyN)
    : studentCdf(-distanceN / standardUncertaintyN, degreesOfFreedom);
}
