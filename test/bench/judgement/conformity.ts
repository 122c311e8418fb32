import type { Contribution } from "../../../app/correction/Budget.ts";
import { combine } from "../../../app/correction/combine.ts";
import { contributionsOf } from "../../../app/correction/contributionsOf.ts";
import { judge } from "../../../app/verdict/judge.ts";
import { uncertaintyOf } from "../../../app/verdict/uncertaintyOf.ts";
import { measureOnce } from "./measureOnce.ts";
import { randomPlace } from "./randomPlace.ts";
import { SeededRandom } from "./SeededRandom.ts";

export type ConformityRow = {
  readonly n: number;
  readonly dominant: Contribution["source"];
  /** Greatest difference between the stated probability and the Monte Carlo run's, over the limits tried. */
  readonly apart: number;
};

/** Limits tried, in combined standard uncertainties from the value: below it, and below and above it. */
const oneSided = [-1.5, -0.5, 0.3, 1, 2, 3];
const twoSided = [
  [0.5, 1],
  [1, 2.5],
  [-0.5, 1.5],
] as const;

/**
 * Probability of conformity against a JCGM 101 run of the same budget: every line is drawn from the distribution that
 * JCGM 101:2008 6.4 assigns to it. All of them are even, so each draw counts with both signs, which halves the noise.
 */
export function conformity(places: number, trials: number, seed: number): readonly ConformityRow[] {
  const random = new SeededRandom(seed);
  return Array.from({ length: places }, (_, i) => {
    const n = [2, 3, 4, 5, 8][i % 5]!;
    const { valueN, input } = measureOnce(randomPlace(random), n, random);
    const budget = combine(contributionsOf(input));
    const sorted = draw(budget.contributions, trials, random).sort();
    const below = (x: number) => 0.5 * (rank(sorted, x) + 1 - rank(sorted, -x));
    const stated = (minimumN: number, maximumN?: number) =>
      judge({ valueN, ...uncertaintyOf(budget), limits: { minimumN, maximumN }, rule: { rule: "probability" } })
        .probabilityConforming!;
    const u = budget.standardN;
    const apart = [
      ...oneSided.map((z) => stated(valueN - z * u) - below(z * u)),
      ...twoSided.map(([a, b]) => stated(valueN - a * u, valueN + b * u) - (below(a * u) - below(-b * u))),
    ];
    return { n, dominant: budget.dominant, apart: Math.max(...apart.map(Math.abs)) };
  });
}

function draw(lines: readonly Contribution[], trials: number, random: SeededRandom): Float64Array {
  const sums = new Float64Array(trials);
  for (const line of lines) {
    for (let i = 0; i < trials; i += 1) sums[i]! += drawOne(line, random);
  }
  return sums;
}

function drawOne({ distribution, standardN, degreesOfFreedom }: Contribution, random: SeededRandom): number {
  if (distribution === "rectangular") return random.rectangle(standardN * Math.sqrt(3));
  if (distribution === "triangular") {
    const half = standardN * Math.sqrt(1.5);
    return random.rectangle(half) + random.rectangle(half);
  }
  return standardN * (distribution === "t" ? random.t(degreesOfFreedom) : random.normal());
}

/** Share of sorted values at or below x. */
function rank(sorted: Float64Array, x: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (sorted[middle]! <= x) low = middle + 1;
    else high = middle;
  }
  return low / sorted.length;
}
