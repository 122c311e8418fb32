import { ratioUncertainty } from "../numerics/ratioUncertainty.ts";
import type { Comparison } from "./Judgement.ts";
import { reaches } from "./reaches.ts";

export type Drop = {
  /** Fraction of the earlier force; down is positive. */
  readonly share: number;
  /** Standard uncertainty of it (k = 1). */
  readonly standard: number;
};

/**
 * How far a force lies below an earlier one, with the uncertainty of the ratio: what both have in common cancels.
 * @param valueN  the force now, newtons
 * @param standardUncertaintyN  k = 1
 * @param earlier  above 0; its uncertainty counts as 0 and its correlation as 0 where absent
 * @throws RangeError  an earlier force that is not above 0
 * @see JCGM 100:2008 (GUM) 5.2.2
 */
export function dropFrom(valueN: number, standardUncertaintyN: number, earlier: Comparison): Drop {
  const { valueN: earlierN, standardUncertaintyN: earlierU = 0, correlation = 0 } = earlier;
  if (!(earlierN > 0)) throw new RangeError(`dropFrom requires an earlier force above 0, got ${earlierN}`);
  return {
    share: (earlierN - valueN) / earlierN, // not 1 - valueN/earlierN: 900 to 810 is 0.1 this way
    standard: ratioUncertainty(valueN, standardUncertaintyN, earlierN, earlierU, correlation),
  };
}

/** Whether a fall is at a limit or beyond it, the border counting as beyond. */
export function fellBy(share: number, limit: number): boolean {
  return reaches(share, limit, 1 + Math.abs(share));
}
