import { addDays, type PlainDate } from "../data/plainDate.ts";
import type { ProofDrift } from "./driftOfProofs.ts";

export type IntervalRule = {
  /** Largest relative change between two proofs that is still acceptable. */
  readonly allowed: number;
  readonly intervalDays: number;
  readonly leastDays: number;
  readonly mostDays: number;
};

export type NextDue = {
  readonly on: PlainDate;
  readonly days: number;
  readonly reason: "firstProof" | "beyondAllowed" | "nearAllowed" | "steady" | "trend" | "unchanged";
};

/** Common practice, no source; a works may set its own. */
export const defaultIntervalRule: IntervalRule = Object.freeze({
  allowed: 0.005,
  intervalDays: 365,
  leastDays: 30,
  mostDays: 730,
});

/**
 * Proposes the day of the next proof from what the last ones showed, step by step: halved after a change beyond the
 * allowed, three quarters after one of more than two thirds of it, half as long again after two in a row within a third,
 * else as before; never later than the trend needs to use the allowed change up.
 * @param lastOn  day of the last proof
 * @throws RangeError  a date that is none, or a rule whose figures do not rise from least to most
 * @see ILAC-G24:2022 / OIML D 10, method 1, automatic adjustment or "staircase" (from memory; the factors: common practice, no source)
 */
export function nextProofDue(lastOn: PlainDate, drift: ProofDrift, rule: IntervalRule = defaultIntervalRule): NextDue {
  const { allowed, intervalDays, leastDays, mostDays } = rule;
  if (!(allowed > 0 && leastDays >= 1 && mostDays >= leastDays && intervalDays >= 1))
    throw new RangeError("an interval rule rises from least to most days, all above zero");
  const [factor, reason] = staircase(drift.steps.map((s) => Math.abs(s.worst.relative) / allowed));
  const proposed = Math.min(mostDays, Math.max(leastDays, Math.round(intervalDays * factor)));
  const slope = Math.abs(drift.perYear?.slope ?? 0) + (drift.perYear?.expanded ?? 0);
  const used = slope > 0 ? Math.floor((365.25 * allowed) / slope) : Infinity;
  const days = Math.max(leastDays, Math.min(proposed, used));
  return { on: addDays(lastOn, days), days, reason: used < proposed ? "trend" : reason };
}

/** @param shares  each change over the allowed one, oldest first */
function staircase(shares: readonly number[]): readonly [number, NextDue["reason"]] {
  const last = shares.at(-1);
  if (last === undefined) return [1, "firstProof"];
  if (last > 1) return [0.5, "beyondAllowed"];
  if (last > 2 / 3) return [0.75, "nearAllowed"];
  const before = shares.at(-2);
  if (before !== undefined && before < 1 / 3 && last < 1 / 3) return [1.5, "steady"];
  return [1, "unchanged"];
}
