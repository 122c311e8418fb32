import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assignment } from "../../../app/numerics/assignment.ts";
import { assignmentWithout } from "../../../app/numerics/assignmentWithout.ts";

describe("assignmentWithout", () => {
  it("is what solving again with the columns forbidden costs more", () => {
    const table = fc
      .tuple(fc.integer({ min: 2, max: 6 }), fc.integer({ min: 1, max: 3 }))
      .chain(([n, more]) =>
        fc.tuple(
          fc.constant(n),
          fc.constant(n + more),
          fc.array(fc.integer({ min: -20, max: 60 }), { minLength: n * (n + more), maxLength: n * (n + more) }),
        ),
      );
    fc.assert(
      fc.property(table, fc.nat(5), fc.nat(8), ([n, m, cost], pick, second) => {
        const row = pick % n;
        const solved = assignment(cost, n, m);
        const barred = new Set([solved.columnOf[row]!, second % m]);
        const again = assignment(
          cost.map((c, k) => (Math.floor(k / m) === row && barred.has(k % m) ? Number.POSITIVE_INFINITY : c)),
          n,
          m,
        );
        expect(assignmentWithout(cost, m, solved, row, (j) => barred.has(j))).toBeCloseTo(again.cost - solved.cost, 9);
      }),
      { numRuns: 500 },
    );
  });

  it("is infinite where there is no other way", () => {
    const solved = assignment([1], 1, 1);
    expect(assignmentWithout([1], 1, solved, 0, () => true)).toBe(Number.POSITIVE_INFINITY);
  });
});
