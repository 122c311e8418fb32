import { describe, expect, it } from "vitest";
import { findSteps } from "../../../../app/trend/step/findSteps.ts";
import published from "../../../published/change-point-tests.json" with { type: "json" };
import { seededNormal } from "../../../support/seededNormal.ts";

const [forty, river] = published.cases;
const indices = (n: number) => Float64Array.from({ length: n }, (_, i) => i);
const series = (n: number, f: (i: number) => number) => Float64Array.from({ length: n }, (_, i) => f(i));

describe("findSteps", () => {
  // Places as published (change-point-tests.json); sizes are the differences of the means at them.
  it("finds the published place of the river volumes, clearly, with the size of the two means", () => {
    const y = Float64Array.from(river!.inputs.values);
    const steps = findSteps(indices(y.length), y);
    expect(steps).toHaveLength(1);
    const mean = (values: Float64Array) => values.reduce((sum, v) => sum + v, 0) / values.length;
    const size = mean(y.subarray(28)) - mean(y.subarray(0, 28));
    expect(steps[0]).toMatchObject({ lastBefore: 27, firstAfter: 28, clear: true, size: expect.closeTo(size, 9) });
    expect(steps[0]!.low).toBeLessThan(size);
    expect(steps[0]!.high).toBeGreaterThan(size);
  });

  it("finds the published place of the 40-point series, where a slope does nearly as well", () => {
    const y = Float64Array.from(forty!.inputs.values);
    expect(findSteps(indices(40), y)).toMatchObject([{ lastBefore: 16, firstAfter: 17, clear: false }]);
  });

  it("finds no step in a plain slope, however steep", () => {
    const normal = seededNormal(21);
    const y = series(40, (i) => 18_000 - 60 * i + 60 * normal());
    expect(findSteps(indices(40), y)).toEqual([]);
  });

  it("finds a step on top of a slope and takes the slope out of its size", () => {
    const normal = seededNormal(22);
    const y = series(30, (i) => 18_000 - 20 * i - (i >= 19 ? 900 : 0) + 50 * normal());
    const steps = findSteps(indices(30), y);
    expect(steps).toMatchObject([{ firstAfter: 19, clear: true }]);
    expect(Math.abs(steps[0]!.size + 900)).toBeLessThan(150);
  });

  it("finds several, each between its neighbours", () => {
    const normal = seededNormal(23);
    const y = series(36, (i) => 20_000 - (i >= 12 ? 800 : 0) - (i >= 25 ? 700 : 0) + 60 * normal());
    const steps = findSteps(indices(36), y);
    expect(steps.map((s) => s.firstAfter)).toEqual([12, 25]);
    for (const step of steps) expect(step.low! < step.size && step.size < step.high!).toBe(true);
  });

  it("is not led to see two steps in a plain slope of any steepness: once in fifty at most", () => {
    const normal = seededNormal(24);
    let led = 0;
    for (let run = 0; run < 400; run += 1) {
      const y = series(24, (i) => ((run % 8) / 4) * i + normal());
      if (findSteps(indices(24), y).filter((s) => s.clear).length > 1) led += 1;
    }
    expect(led).toBeLessThanOrEqual(8);
  });

  it("does not care for the origin and the scale of x and y", () => {
    const y = Float64Array.from(river!.inputs.values);
    const moved = findSteps(
      indices(100).map((i) => 1.6e12 + 86_400_000 * i),
      y.map((v) => 2 ** 20 + 4 * v),
    );
    const plain = findSteps(indices(100), y);
    expect(moved.map((s) => s.firstAfter)).toEqual(plain.map((s) => s.firstAfter));
    expect(moved[0]!.size).toBeCloseTo(4 * plain[0]!.size, 6);
  });

  it("keeps to exact data: a staircase of two treads", () => {
    const y = series(8, (i) => (i < 4 ? 2 : 1));
    expect(findSteps(indices(8), y)).toMatchObject([{ firstAfter: 4, size: -1, low: -1, high: -1 }]);
  });

  it("finds nothing in five values, in equal values, and at one date", () => {
    expect(findSteps(indices(5), Float64Array.of(1, 1, 9, 9, 9))).toEqual([]);
    expect(findSteps(indices(9), new Float64Array(9).fill(4))).toEqual([]);
    expect(findSteps(new Float64Array(8), Float64Array.of(1, 1, 1, 1, 9, 9, 9, 9))).toEqual([]);
    expect(findSteps(new Float64Array(0), new Float64Array(0))).toEqual([]);
  });
});
