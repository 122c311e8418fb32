import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { crossingSlopes } from "../../../app/numerics/crossingSlopes.ts";
import { SlopeOrder } from "../../../app/numerics/SlopeOrder.ts";
import { slopePairCounts } from "../../../app/numerics/slopePairCounts.ts";
import { slopeSample } from "../../../app/numerics/slopeSample.ts";

// Whole numbers of x and slopes in quarters: every product is exact, so a plain count is the truth.
const points = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 15 }), fc.integer({ min: -9, max: 9 })), { minLength: 2, maxLength: 50 })
  .map((list) => list.sort((a, b) => a[0] - b[0]))
  .map((list) => ({
    xs: Float64Array.from(list, (p) => p[0]),
    ys: Float64Array.from(list, (p) => p[1]),
  }));
const slope = fc.integer({ min: -12, max: 12 }).map((quarters) => quarters / 4);

function nextX(xs: Float64Array): Uint32Array {
  return Uint32Array.from(xs, (x) => {
    const next = xs.findIndex((other) => other > x);
    return next < 0 ? xs.length : next;
  });
}

function slopesOf(xs: Float64Array, ys: Float64Array): number[] {
  const all: number[] = [];
  for (let i = 0; i < xs.length; i += 1) {
    for (let j = i + 1; j < xs.length; j += 1) if (xs[j]! > xs[i]!) all.push((ys[j]! - ys[i]!) / (xs[j]! - xs[i]!));
  }
  return all;
}

describe("slopePairCounts", () => {
  it("counts the pairs under, and at or under, a trial slope as a loop over all pairs does", () => {
    fc.assert(
      fc.property(points, slope, ({ xs, ys }, trial) => {
        const all = slopesOf(xs, ys);
        expect(slopePairCounts(new SlopeOrder(xs, ys, trial), nextX(xs))).toEqual({
          less: all.filter((s) => s < trial).length,
          atMost: all.filter((s) => s <= trial).length,
        });
      }),
    );
  });
});

describe("crossingSlopes", () => {
  it("gives the slopes strictly between two trial slopes, the infinities too", () => {
    const end = fc.oneof(slope, fc.constantFrom(Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY));
    fc.assert(
      fc.property(points, end, end, ({ xs, ys }, a, b) => {
        fc.pre(a < b);
        const got = crossingSlopes(xs, ys, new SlopeOrder(xs, ys, a), new SlopeOrder(xs, ys, b), 1);
        const want = slopesOf(xs, ys).filter((s) => s > a && s < b);
        expect(got.slice().sort()).toEqual(Float64Array.from(want).sort());
      }),
    );
  });
});

describe("slopeSample", () => {
  it("draws only slopes of the bracket, and the same ones again", () => {
    fc.assert(
      fc.property(points, slope, slope, ({ xs, ys }, a, b) => {
        fc.pre(a < b);
        const [low, high] = [new SlopeOrder(xs, ys, a), new SlopeOrder(xs, ys, b)];
        const got = slopeSample(xs, ys, low, high, 30);
        expect(got).toEqual(slopeSample(xs, ys, low, high, 30));
        const inside = new Set(slopesOf(xs, ys).filter((s) => s > a && s < b));
        expect([...got].every((s) => inside.has(s))).toBe(true);
      }),
    );
  });

  it("draws each pair about as often as the next", () => {
    const xs = Float64Array.of(0, 1, 2, 3);
    const ys = Float64Array.of(0, 5, 1, 12);
    const whole = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY].map((s) => new SlopeOrder(xs, ys, s));
    const drawn = Map.groupBy(slopeSample(xs, ys, whole[0]!, whole[1]!, 6000), (s) => s);
    expect(drawn.size).toBe(6);
    for (const group of drawn.values()) expect(Math.abs(group.length - 1000)).toBeLessThan(150);
  });
});
