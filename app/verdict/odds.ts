import { type Measured, probabilityBeyond } from "./probabilityBeyond.ts";

/** The probability that the true force lies within the limits, and that it does not, each in full digits. */
export type Odds = { readonly conforming: number; readonly not: number };

/**
 * Odds of the true force lying on the good side of one limit, `marginN` away from the value (negative: beyond it).
 * The smaller of the two is computed, the other is what it leaves of 1.
 * @see JCGM 106:2012 7.3
 */
export function oddsAt(measured: Measured, marginN: number): Odds {
  const smaller = probabilityBeyond(measured, Math.abs(marginN));
  return marginN < 0 ? { conforming: smaller, not: 1 - smaller } : { conforming: 1 - smaller, not: smaller };
}

/**
 * Odds of lying between a minimum and a maximum, from those at each. From outside, what lies between is a difference of
 * tails: 1 - below - above would cancel to nothing.
 * @see JCGM 106:2012 7.4
 */
export function oddsBetween(atMinimum: Odds, atMaximum: Odds): Odds {
  const conforming =
    atMinimum.conforming < 0.5 ? atMinimum.conforming - atMaximum.not : atMaximum.conforming - atMinimum.not;
  return { conforming: Math.max(0, conforming), not: Math.min(1, atMinimum.not + atMaximum.not) };
}
