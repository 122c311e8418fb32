import type { Expectation } from "./MatchStop.ts";

/** Share of checks that show something new: a broken spring, a dry gripper, a service (common practice, no source). */
const CHANGED = 0.05;
/** Such a check lies anywhere in a span of this natural logarithm: from half of what was expected to a third more. */
const CHANGED_SPAN = 1;
/** A force of which nothing is known lies anywhere between 0.5 and 100 kN, on a logarithmic scale. */
const UNKNOWN_SPAN = Math.log(200);

/** From here on a take is no longer taken for the usual scatter. */
export const CORE = 4;

/** How many of its scatters a force lies from what was expected. */
export function distance(forceN: number, { forceN: expectedN, spread }: Expectation): number {
  return Math.log(forceN / expectedN) / spread;
}

/** Minus the logarithm of the chance density of a force at a spindle, in natural units of log force. */
export function surprise(forceN: number, expected: Expectation | undefined): number {
  if (expected === undefined) return unknownSurprise;
  const z = distance(forceN, expected);
  const usual = ((1 - CHANGED) / (expected.spread * Math.sqrt(2 * Math.PI))) * Math.exp((-z * z) / 2);
  const away = Math.log(forceN / expected.forceN);
  const changed = away > -0.7 && away < 0.3 ? CHANGED / CHANGED_SPAN : 1e-6;
  return -Math.log(usual + changed);
}

/** The same for a force that belongs to no spindle of the round. */
export const unknownSurprise = Math.log(UNKNOWN_SPAN);
