import { welchSatterthwaite } from "../numerics/welchSatterthwaite.ts";
import type { Budget, Contribution } from "./Budget.ts";
import { coverageFactorFor } from "./coverageFactorFor.ts";

/**
 * Combines the lines of a budget: root of the sum of squares, effective degrees of freedom, coverage factor, expanded
 * uncertainty, and the source that matters most.
 * @param contributions  independent of each other; at least one above zero
 * @param coverage  probability that the interval is meant to hold, above 0 and below 1
 * @throws RangeError  no line above zero
 * @see JCGM 100:2008 (GUM) 5.1.2, 6.2, G.4.1, G.6.4
 */
export function combine(contributions: readonly Contribution[], coverage: number = 0.95): Budget {
  let variance = 0;
  const bySource = new Map<Contribution["source"], number>();
  for (const { source, standardN } of contributions) {
    variance += standardN * standardN;
    bySource.set(source, (bySource.get(source) ?? 0) + standardN * standardN);
  }
  if (!(variance > 0)) throw new RangeError("a budget requires at least one contribution above zero");
  const dominant = [...bySource].reduce((most, next) => (next[1] > most[1] ? next : most))[0];
  const standardN = Math.sqrt(variance);
  const degreesOfFreedom = welchSatterthwaite(
    contributions.map((c) => ({ standard: c.standardN, degreesOfFreedom: c.degreesOfFreedom })),
  );
  const coverageFactor = coverageFactorFor(contributions, degreesOfFreedom, coverage);
  return {
    contributions,
    standardN,
    degreesOfFreedom,
    coverageFactor,
    coverage,
    expandedN: coverageFactor * standardN,
    dominant,
  };
}
