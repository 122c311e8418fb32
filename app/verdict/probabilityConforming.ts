import type { JudgeInput } from "./Judgement.ts";
import { probabilityBeyond } from "./probabilityBeyond.ts";

/** The probability that the true force lies within the limits, and that it does not, each in full digits. */
export type Odds = { readonly conforming: number; readonly not: number };

/**
 * Probability of conformity with a minimum, a maximum, or both.
 * @param measured  value, uncertainty, and their distribution
 * @returns  undefined when neither limit is given
 * @see JCGM 106:2012 7.3 (one limit), 7.4 (two)
 */
export function probabilityConforming(
  measured: JudgeInput & { readonly valueN: number },
  minimumN?: number,
  maximumN?: number,
): Odds | undefined {
  const { valueN } = measured;
  // Above the minimum and below the maximum by this much; negative outside.
  const over = minimumN === undefined ? Infinity : valueN - minimumN;
  const under = maximumN === undefined ? Infinity : maximumN - valueN;
  if (over === Infinity && under === Infinity) return undefined;
  const below = over === Infinity ? 0 : probabilityBeyond(measured, over);
  const above = under === Infinity ? 0 : probabilityBeyond(measured, under);
  // From outside, what lies between is a difference of tails; 1 - below - above would cancel to nothing.
  if (over < 0)
    return { conforming: difference(probabilityBeyond(measured, -over), above), not: Math.min(1, below + above) };
  if (under < 0)
    return { conforming: difference(probabilityBeyond(measured, -under), below), not: Math.min(1, below + above) };
  return { conforming: difference(1 - below, above), not: Math.min(1, below + above) };
}

const difference = (a: number, b: number) => Math.max(0, a - b);
