import { describe, expect, it } from "vitest";
import { kendallNull } from "../../../app/numerics/kendallNull.ts";

function permutations(values: readonly number[]): number[][] {
  if (values.length === 0) return [[]];
  return values.flatMap((v, i) => permutations([...values.slice(0, i), ...values.slice(i + 1)]).map((p) => [v, ...p]));
}

const spread = (groups: readonly number[]) => groups.flatMap((size, g) => Array.from({ length: size }, () => g));

/** Every order, one by one. */
function plainly(groupsX: readonly number[], groupsY: readonly number[]): Map<number, number> {
  const x = spread(groupsX);
  const all = permutations(spread(groupsY));
  const chances = new Map<number, number>();
  for (const y of all) {
    let s = 0;
    for (let i = 0; i < x.length; i += 1) {
      for (let j = i + 1; j < x.length; j += 1) if (x[j]! > x[i]!) s += Math.sign(y[j]! - y[i]!);
    }
    chances.set(s, (chances.get(s) ?? 0) + 1 / all.length);
  }
  return chances;
}

const upper = (chances: ReadonlyMap<number, number>, s: number) =>
  [...chances].reduce((sum, [value, p]) => (value >= s ? sum + p : sum), 0);

describe("kendallNull", () => {
  // Upper tails without ties, as printed to three figures: EPA 530/R-09-007, table 17-5; Hollander and Wolfe,
  // Nonparametric Statistical Methods, table A.21 (from memory; each follows by counting).
  it.each([
    [4, 4, 0.167],
    [4, 6, 0.042],
    [5, 8, 0.042],
    [6, 11, 0.028],
    [7, 13, 0.035],
    [8, 16, 0.031],
    [9, 18, 0.038],
    [10, 21, 0.036],
    [10, 25, 0.014],
  ])("n = %i: S of %i and more has the printed chance %f", (n, s, printed) => {
    const alone = Array.from({ length: n }, () => 1);
    expect(Math.abs(upper(kendallNull(alone, alone), s) - printed)).toBeLessThan(0.0005);
  });

  it.each([
    [
      [1, 1, 1, 1, 1],
      [1, 1, 1, 1, 1],
    ],
    [
      [1, 1, 1, 1, 1, 1],
      [2, 1, 3],
    ],
    [
      [3, 1, 2],
      [1, 1, 1, 1, 1, 1],
    ],
    [
      [2, 1, 1, 2],
      [3, 2, 1],
    ],
    [
      [2, 1, 1, 2],
      [1, 2, 3],
    ],
    [
      [2, 2, 2],
      [1, 4, 1],
    ],
    [[6], [2, 4]],
  ])("counts as trying every order does: groups %j and %j", (groupsX, groupsY) => {
    const got = kendallNull(groupsX, groupsY);
    const want = plainly(groupsX, groupsY);
    expect([...got.keys()].sort((a, b) => a - b)).toEqual([...want.keys()].sort((a, b) => a - b));
    for (const [s, p] of want) expect(Math.abs(got.get(s)! - p)).toBeLessThan(1e-12);
  });

  it.each([
    [[], []],
    [[1, 1], [3]],
    [[13], [13]],
  ])("refuses groups %j and %j", (groupsX, groupsY) => {
    expect(() => kendallNull(groupsX, groupsY)).toThrow(RangeError);
  });
});
