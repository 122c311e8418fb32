import { describe, expect, it } from "vitest";
import { mannKendall } from "../../../app/trend/mannKendall.ts";
import { serialMemory } from "../../../app/trend/serialMemory.ts";
import { seededNormal } from "../../support/seededNormal.ts";

/** First-order autoregressive series with unit spread. */
function remembering(n: number, r: number, seed: number): number[] {
  const normal = seededNormal(seed);
  const values = [normal()];
  while (values.length < n) values.push(r * values.at(-1)! + Math.sqrt(1 - r * r) * normal());
  return values;
}

const x = (n: number) => Array.from({ length: n }, (_, i) => i);

describe("serialMemory", () => {
  it("estimates lag 1 of a long series", () => {
    const values = remembering(4000, 0.5, 5);
    expect(serialMemory(values, mannKendall(x(4000), values)).lag1).toBeCloseTo(0.5, 1);
  });

  // Yue and Wang (2004): for long series the factor tends to (1 + r)/(1 - r); a series of 4,000 is near that.
  it("multiplies the variance of S as an autoregressive series does", () => {
    const values = remembering(4000, 0.5, 5);
    const { varianceFactor, lag1 } = serialMemory(values, mannKendall(x(4000), values));
    expect(varianceFactor / ((1 + lag1) / (1 - lag1))).toBeCloseTo(1, 2);
  });

  it("raises p where memory is found, and leaves it where none is", () => {
    const values = remembering(60, 0.7, 3);
    const test = mannKendall(x(60), values);
    const got = serialMemory(values, test);
    expect(got.found).toBe(true);
    expect(got.p!).toBeGreaterThan(test.p);
    const own = remembering(60, 0, 4);
    const plain = mannKendall(x(60), own);
    expect(serialMemory(own, plain)).toMatchObject({ found: false, varianceFactor: 1, p: plain.p });
  });

  it("cannot tell a trend from memory in fewer than twenty values", () => {
    const values = [5, 5, 5, 5, 5, 1, 1, 1, 1, 1, 5, 5, 5, 5, 5];
    expect(serialMemory(values, mannKendall(x(15), values))).toMatchObject({ found: true, p: undefined });
  });

  it.each([[[1, 2, 3]], [[4, 4, 4, 4, 4, 4, 4, 4, 4]]])("finds nothing in %j", (values) => {
    expect(serialMemory(values, mannKendall(x(values.length), values)).found).toBe(false);
  });
});
