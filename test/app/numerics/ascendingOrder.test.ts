import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ascendingOrder } from "../../../app/numerics/ascendingOrder.ts";

const byComparison = (values: readonly number[]) =>
  values.map((_, i) => i).sort((a, b) => values[a]! - values[b]! || a - b);

describe("ascendingOrder", () => {
  // Array.prototype.sort of the language (ECMA-262) is stable and stands for the reference.
  it("agrees with a stable sort by comparison, short and long", () => {
    const value = fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.integer({ min: -3, max: 3 }));
    fc.assert(
      fc.property(fc.oneof(fc.array(value), fc.array(value, { minLength: 200, maxLength: 700 })), (values) => {
        expect([...ascendingOrder(values)]).toEqual(byComparison(values));
      }),
      { numRuns: 150 },
    );
  });

  it("takes 0 and -0 as equal", () => {
    const zeros = Array.from({ length: 300 }, (_, i) => (i % 2 === 0 ? 0 : -0));
    expect([...ascendingOrder([1, ...zeros])]).toEqual([...zeros.map((_, i) => i + 1), 0]);
  });

  it("sorts by a second key from a first order", () => {
    const y = [2, 1, 2, 1, 0];
    const x = [5, 5, 4, 4, 5];
    expect([...ascendingOrder(x, ascendingOrder(y))]).toEqual([3, 2, 4, 1, 0]);
  });

  it("leaves the order it was given untouched", () => {
    const start = Uint32Array.of(2, 1, 0);
    ascendingOrder([3, 2, 1], start);
    ascendingOrder([1, 2, 3], start);
    expect([...start]).toEqual([2, 1, 0]);
  });
});
