import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pairwiseSlopes } from "../../../app/numerics/pairwiseSlopes.ts";
import { seededNormal, seededUniform } from "../../support/seededNormal.ts";

/** All slopes by the definition, sorted. */
function sortedSlopes(x: readonly number[], y: readonly number[]): Float64Array {
  const slopes: number[] = [];
  for (let i = 0; i < x.length; i += 1) {
    for (let j = i + 1; j < x.length; j += 1) {
      if (x[i] !== x[j]) slopes.push((y[j]! - y[i]!) / (x[j]! - x[i]!) + 0); // never -0
    }
  }
  return Float64Array.from(slopes).sort();
}

const ranksOf = (pairs: number) => {
  const ranks = [1, 0.25 * pairs, 0.48 * pairs, 0.5 * pairs, 0.5 * pairs + 1, 0.52 * pairs, 0.97 * pairs, pairs];
  return ranks.map((rank) => Math.max(1, Math.min(pairs, Math.round(rank))));
};

const normal = seededNormal(11);
const uniform = seededUniform(12);
const rows = (n: number, f: (i: number) => number) => Array.from({ length: n }, (_, i) => f(i));

/** More pairs than are enumerated, so that the counting way is taken. */
const n = 1500;
const dayMs = 86_400_000;
const long: readonly [string, number[], number[]][] = [
  ["noise on a slope", rows(n, (i) => i), rows(n, (i) => 18_000 - 0.05 * i + 80 * normal())],
  ["a coarse gauge", rows(n, (i) => i), rows(n, (i) => Math.round(180 - 0.001 * i + normal()) / 10)],
  ["few x and few y", rows(n, () => Math.floor(20 * uniform())), rows(n, () => Math.floor(5 * uniform()))],
  ["all equal", rows(n, (i) => i), rows(n, () => 7)],
  ["one step", rows(n, (i) => i), rows(n, (i) => (i < 700 ? 3 : 1))],
  ["stairs", rows(n, (i) => i), rows(n, (i) => Math.floor(i / 3) / 8)],
  [
    "milliseconds since 1970",
    rows(n, (i) => 1.7e12 + i * dayMs + Math.floor(1e7 * uniform())),
    rows(n, (i) => Math.round(180_000 - 0.1 * i + 800 * normal()) / 10),
  ],
  ["nearly all at one x", rows(n, (i) => Math.min(i, 400)), rows(n, () => normal())],
];

describe("pairwiseSlopes", () => {
  it("takes from the sorted list of all slopes, small samples", () => {
    const value = fc.integer({ min: -40, max: 40 });
    const points = fc.array(fc.tuple(value, value), { minLength: 2, maxLength: 40 });
    fc.assert(
      fc.property(points, (list) => {
        const x = list.map((p) => p[0]);
        const y = list.map((p) => p[1]);
        const all = sortedSlopes(x, y);
        fc.pre(all.length > 0);
        const ranks = ranksOf(all.length);
        expect(pairwiseSlopes(x, y, ranks).map((s) => s + 0)).toEqual(ranks.map((rank) => all[rank - 1]));
      }),
    );
  });

  // Values in halves, quarters and eighths divide exactly, so a slope tied in the data is tied in the list too.
  it.each(long)("takes the very same slopes by counting: %s", (_, x, y) => {
    const all = sortedSlopes(x, y);
    expect(all.length).toBeGreaterThan(200_000);
    const ranks = ranksOf(all.length);
    const got = pairwiseSlopes(x, y, ranks);
    for (const [k, rank] of ranks.entries()) {
      const want = all[rank - 1]!;
      expect(Math.abs(got[k]! - want)).toBeLessThanOrEqual(1e-12 * Math.abs(want));
    }
  });

  it("does not care for the order of the points", () => {
    const [, x, y] = long[0]!;
    const turned = rows(n, (i) => (i * 7) % n);
    const ranks = ranksOf((n * (n - 1)) / 2);
    expect(
      pairwiseSlopes(
        turned.map((i) => x[i]!),
        turned.map((i) => y[i]!),
        ranks,
      ),
    ).toEqual(pairwiseSlopes(x, y, ranks));
  });

  it.each([
    ["lengths that differ", [1, 2], [1], [1]],
    ["rank 0", [1, 2], [1, 2], [0]],
    ["a rank past the last", [1, 2], [1, 2], [2]],
    ["one x only", [1, 1], [1, 2], [1]],
  ])("refuses %s", (_, x, y, ranks) => {
    expect(() => pairwiseSlopes(x, y, ranks)).toThrow(RangeError);
  });
});
