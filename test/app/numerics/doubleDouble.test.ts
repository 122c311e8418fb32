import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ddAdd, ddDivide, ddMultiply, ddOf, ddSubtract } from "../../../app/numerics/doubleDouble.ts";

const whole = fc.integer({ min: -(2 ** 52), max: 2 ** 52 });
const exact = (v: { hi: number; lo: number }) => BigInt(v.hi) + BigInt(v.lo);

// Reference: whole-number arithmetic of the language, which is exact at any length.
describe("double-double arithmetic", () => {
  it("multiplies two 53-bit numbers exactly", () => {
    fc.assert(fc.property(whole, whole, (a, b) => exact(ddMultiply(ddOf(a), ddOf(b))) === BigInt(a) * BigInt(b)));
  });

  it("adds and subtracts without losing the small beside the large", () => {
    fc.assert(
      fc.property(whole, whole, fc.integer({ min: -1000, max: 1000 }), (a, b, c) => {
        const product = ddMultiply(ddOf(a), ddOf(b));
        const sum = ddAdd(product, ddOf(c));
        return exact(sum) === BigInt(a) * BigInt(b) + BigInt(c) && exact(ddSubtract(sum, product)) === BigInt(c);
      }),
    );
  });

  it("divides to thirty digits: (1/3) x 3 is 1", () => {
    const third = ddDivide(ddOf(1), ddOf(3));
    const rest = ddSubtract(ddMultiply(third, ddOf(3)), ddOf(1));
    expect(Math.abs(rest.hi + rest.lo)).toBeLessThan(1e-31);
    expect(third.lo).not.toBe(0);
  });
});
