import type { Expectation } from "./MatchStop.ts";

/** What checks of one spindle scatter by where nothing is known of it, and how many checks that weighs (common practice, no source). */
const USUAL = 0.01;
const WEIGHT = 4;
/** Never less: seating, another hand, another day. */
const LEAST = 0.004;
/** Of a nominal value, a spindle in use may lie this far off either way. */
const NOMINAL_SCATTER = 0.08;
const RECENT = 8;

/**
 * What the next check of a spindle will show, from its last ones: their level, and a relative standard deviation drawn
 * towards what is usual when they are few. Differences from check to check carry the scatter, so that a slow fall does not
 * widen it.
 * @param valuesN  earlier checks, oldest first, newtons
 * @param nominalN  the builder's figure, where there is no check
 */
export function expectationOf(valuesN: readonly number[], nominalN?: number): Expectation | undefined {
  const recent = valuesN.filter((v) => v > 0).slice(-RECENT);
  const n = recent.length;
  if (n === 0)
    return nominalN === undefined ? undefined : { forceN: nominalN, scatter: NOMINAL_SCATTER, spread: NOMINAL_SCATTER };
  let squares = 0;
  for (let i = 1; i < n; i += 1) squares += Math.log(recent[i]! / recent[i - 1]!) ** 2 / 2;
  const scatter = Math.max(LEAST, Math.sqrt((WEIGHT * USUAL ** 2 + squares) / (WEIGHT + n - 1)));
  const last = recent.slice(-3);
  const forceN = Math.exp(last.reduce((sum, v) => sum + Math.log(v), 0) / last.length);
  return { forceN, scatter, spread: scatter * Math.sqrt(1 + 1 / last.length) };
}
