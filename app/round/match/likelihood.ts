import type { Expectation } from "./MatchStop.ts";

/**
 * Shares of checks that show something new, a fall (a broken spring, a dry gripper) or a rise (a service), and the natural
 * logarithm of force by which they commonly do: small changes are common, great ones rare (common practice, no source).
 */
const FALL = { share: 0.04, by: 0.07 };
const RISE = { share: 0.01, by: 0.04 };
/** Beyond all that: so rare that a force is sooner a stray. */
const BEYOND = 1e-6;
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
  const share = 1 - FALL.share - RISE.share;
  const usual = (share / (expected.spread * Math.sqrt(2 * Math.PI))) * Math.exp((-z * z) / 2);
  const away = Math.log(forceN / expected.forceN);
  const { share: some, by } = away < 0 ? FALL : RISE;
  const changed = (some / by) * Math.exp(-Math.abs(away) / by) + BEYOND;
  return -Math.log(usual + changed);
}

/** The same for a force that belongs to no spindle of the round. */
export const unknownSurprise = Math.log(UNKNOWN_SPAN);
