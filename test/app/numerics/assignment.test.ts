import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assignment } from "../../../app/numerics/assignment.ts";

/** Every way tried: the check from outside for what the solver claims. */
function cheapest(cost: readonly (readonly number[])[], row = 0, taken = 0): number {
  if (row === cost.length) return 0;
  let best = Number.POSITIVE_INFINITY;
  for (const [j, c] of cost[row]!.entries()) {
    if ((taken & (1 << j)) === 0) best = Math.min(best, c + cheapest(cost, row + 1, taken | (1 << j)));
  }
  return best;
}

describe("assignment", () => {
  // The worked example of a general-purpose library's documentation (scipy.optimize.linear_sum_assignment): cost 5, from memory.
  it("meets the documented example", () => {
    const { columnOf, cost } = assignment(Object.freeze([4, 1, 3, 2, 0, 5, 3, 2, 2]), 3, 3);
    expect([...columnOf]).toEqual([1, 0, 2]);
    expect(cost).toBe(5);
  });

  // Machol and Wien, Oper. Res. 24 (1976) 190: cost i x j; the anti-diagonal is optimal, sum of i (n + 1 - i), from memory.
  it("meets the closed form of the hard instances cost = i x j", () => {
    const n = 40;
    const cost = Array.from({ length: n * n }, (_, k) => (Math.floor(k / n) + 1) * ((k % n) + 1));
    expect(assignment(cost, n, n).cost).toBe((n * (n + 1) * (n + 2)) / 6);
  });

  it("costs what trying every way finds, also with more columns than rows and forbidden pairs", () => {
    const entry = fc.oneof(fc.integer({ min: -9, max: 99 }), fc.constant(Number.POSITIVE_INFINITY));
    const table = fc
      .tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 0, max: 2 }))
      .chain(([n, more]) =>
        fc.array(fc.array(entry, { minLength: n + more, maxLength: n + more }), { minLength: n, maxLength: n }),
      );
    fc.assert(
      fc.property(table, (cost) => {
        const best = cheapest(cost);
        const solve = () => assignment(cost.flat(), cost.length, cost[0]!.length);
        if (best === Number.POSITIVE_INFINITY) expect(solve).toThrow(RangeError);
        else {
          const { columnOf, cost: found } = solve();
          expect(found).toBe(best);
          expect(new Set(columnOf).size).toBe(cost.length);
        }
      }),
      { numRuns: 300 },
    );
  });

  it("does not change its choice when a row's costs all rise by the same", () => {
    const cost = [7, 3, 9, 4, 8, 2, 6, 5, 1];
    const raised = cost.map((c, k) => c + (k < 3 ? 1000 : 0));
    expect([...assignment(raised, 3, 3).columnOf]).toEqual([...assignment(cost, 3, 3).columnOf]);
  });

  it("refuses more rows than columns", () => {
    expect(() => assignment([1, 2], 2, 1)).toThrow(RangeError);
  });
});
