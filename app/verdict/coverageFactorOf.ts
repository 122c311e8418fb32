import { normalCdf } from "../numerics/normalCdf.ts";
import { studentQuantile } from "../numerics/studentQuantile.ts";
import type { DecisionRule } from "./Judgement.ts";

/**
 * The coverage factor a decision rule works with: the one it states, else 2, and 1.645 under `iso14253`. Where the
 * effective degrees of freedom are few, the unstated factor is widened to the same probability of Student's t, the
 * degrees cut down to a whole number: 2 becomes 2.87 at four.
 * @see JCGM 100:2008 (GUM) G.4.1 and table G.2, column 95.45 %; ISO 14253-1:2017 (from memory): 95 % on one side
 */
export function coverageFactorOf({ rule, coverageFactor }: DecisionRule, degreesOfFreedom: number | undefined): number {
  if (coverageFactor !== undefined) return coverageFactor;
  const factor = rule === "iso14253" ? 1.645 : 2;
  if (degreesOfFreedom === undefined || degreesOfFreedom === Infinity) return factor;
  const whole = Math.max(1, Math.floor(degreesOfFreedom * (1 + 1e-12)));
  const at = 2 * Math.min(whole, MANY) + (rule === "iso14253" ? 1 : 0);
  const known = widened.get(at) ?? -studentQuantile(normalCdf(-factor), Math.min(whole, MANY));
  widened.set(at, known);
  return known;
}

/** Kept because re-judging a whole works asks for the same few over and over. */
const widened = new Map<number, number>();

/** From here on the factor stands still to three digits. */
const MANY = 2000;
