import { expMinusHalfSquare } from "../numerics/expMinusHalfSquare.ts";
import { findRoot } from "../numerics/findRoot.ts";
import { normalCdf } from "../numerics/normalCdf.ts";
import { normalQuantile } from "../numerics/normalQuantile.ts";
import { studentQuantile } from "../numerics/studentQuantile.ts";
import type { Contribution } from "./Budget.ts";

/**
 * The factor that makes an interval of the stated coverage out of a combined standard uncertainty: from Student's t
 * with the effective degrees of freedom cut down to a whole number, as the GUM does. Where a single rectangle carries
 * more than half of the variance the sum is no bell: t's factor is then scaled by what a rectangle and a bell of these
 * sizes need, down to 1.65 for a rectangle alone; without it the interval would hold nearly everything and say 95 %.
 * @param degreesOfFreedom  effective, 1 or more
 * @param coverage  above 0, below 1
 * @see JCGM 100:2008 (GUM) G.4.1 note 1, G.6.4; G.2.2 and 6.3.3 on one dominating rectangle; EA-4/02 M:2022 S9.14 (from memory)
 */
export function coverageFactorFor(
  contributions: readonly Contribution[],
  degreesOfFreedom: number,
  coverage: number,
): number {
  const factor = studentFactor(coverage, wholeDegrees(degreesOfFreedom));
  let variance = 0;
  let greatest = 0;
  for (const { standardN, distribution } of contributions) {
    variance += standardN * standardN;
    if (distribution === "rectangular") greatest = Math.max(greatest, standardN);
  }
  const share = (greatest * greatest) / variance;
  return share > 0.5 ? (factor * rectangleFactor(share, coverage)) / normalQuantile(0.5 + coverage / 2) : factor;
}

/** Rounding must not cut 5 down to 4. */
const wholeDegrees = (degreesOfFreedom: number) => Math.max(1, Math.floor(degreesOfFreedom * (1 + 1e-12)));

/** Two-sided factor of Student's t; kept, since a works' checks ask for the same few over and over. */
function studentFactor(coverage: number, degreesOfFreedom: number): number {
  if (!(degreesOfFreedom <= 1000)) return studentQuantile(0.5 + coverage / 2, degreesOfFreedom);
  const key = `${coverage} ${degreesOfFreedom}`;
  const factor = kept.get(key) ?? studentQuantile(0.5 + coverage / 2, degreesOfFreedom);
  kept.set(key, factor);
  return factor;
}

const kept = new Map<string, number>();

/** Half-width, in combined standard uncertainties, that holds `coverage` of a rectangle with `share` of the variance plus a bell with the rest. */
function rectangleFactor(share: number, coverage: number): number {
  const halfWidth = Math.sqrt(3 * share);
  const sigma = Math.sqrt(1 - share);
  if (sigma < 1e-6) return coverage * halfWidth;
  const integral = (x: number) =>
    x * normalCdf(x / sigma) + (sigma * expMinusHalfSquare(x / sigma)) / Math.sqrt(2 * Math.PI);
  const within = (h: number) => (integral(h + halfWidth) - integral(h - halfWidth)) / halfWidth - 1;
  return findRoot((h) => within(h) - coverage, 0, halfWidth + sigma * normalQuantile(0.5 + coverage / 2));
}
