import type { Contribution } from "../../../app/correction/Budget.ts";
import { combine } from "../../../app/correction/combine.ts";
import { contributionsOf } from "../../../app/correction/contributionsOf.ts";
import { measureOnce } from "./measureOnce.ts";
import { randomPlace } from "./randomPlace.ts";
import { SeededRandom } from "./SeededRandom.ts";

export type CoverageRow = {
  readonly n: number;
  /** Share of trials whose stated 95 % interval held the true force. */
  readonly covered: number;
  /** Mean of the stated relative expanded uncertainty. */
  readonly relative: number;
  readonly factor: number;
  readonly dominant: Contribution["source"];
};

/**
 * How often the stated 95 % interval holds the truth: for each of `places` random places the whole measurement is
 * repeated with new errors each time, and each time budget and interval are made from the readings alone.
 */
export function coverage(n: number, places: number, trials: number, seed: number): readonly CoverageRow[] {
  const random = new SeededRandom(seed);
  return Array.from({ length: places }, () => {
    const place = randomPlace(random);
    let held = 0;
    let relative = 0;
    let factor = 0;
    const dominant = new Map<Contribution["source"], number>();
    for (let i = 0; i < trials; i += 1) {
      const { trueN, valueN, input } = measureOnce(place, n, random);
      const budget = combine(contributionsOf(input));
      if (Math.abs(valueN - trueN) <= budget.expandedN) held += 1;
      relative += budget.expandedN / valueN / trials;
      factor += budget.coverageFactor / trials;
      dominant.set(budget.dominant, (dominant.get(budget.dominant) ?? 0) + 1);
    }
    const most = [...dominant].toSorted((a, b) => b[1] - a[1])[0]![0];
    return { n, covered: held / trials, relative, factor, dominant: most };
  });
}
